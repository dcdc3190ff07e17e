package weatherlap.reports.page;

import java.util.List;
import java.util.Map;

/** What every report says of its run: what of the input was doubtful, and what the results depend on. */
public final class RunBlocks {
    private RunBlocks() {}

    /** Doubtful but usable input; no blocks where there is none. */
    public static List<Block> doubtful(List<String> warnings) {
        return warnings.isEmpty() ? List.of() : List.of(Block.Heading.of("Doubtful input"), new Block.Points(warnings));
    }

    /** @param run what is needed to repeat the run: name and value */
    public static Block.Kept repeat(Map<String, ?> run) {
        return new Block.Kept(Block.Heading.of("To repeat this run"), depends(run));
    }

    /** The same without its heading. */
    public static Block.Table depends(Map<String, ?> run) {
        TableView.Builder table = TableView.of("What the results depend on").texts("name", "value");
        run.forEach((name, value) -> table.row(name, value.toString()));
        return new Block.Table(table.build(), "long", "");
    }
}
