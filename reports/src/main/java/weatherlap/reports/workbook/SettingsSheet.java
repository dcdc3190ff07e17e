package weatherlap.reports.workbook;

import java.io.IOException;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import weatherlap.charts.kit.Tone;
import weatherlap.datasets.assumptions.SettingRows;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.CsvText;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;

/** A scenario as a sheet to edit: first the choices, with their words to pick from, then the numbers, each with its unit and what it rests on. */
record SettingsSheet(Scenario scenario) {
    static final String NAME = "Settings";

    private static final List<Column> COLUMNS = SettingRows.SCHEMA.columns();
    private static final int VALUE = place("value");
    private static final int LOW = place("low");
    private static final int HIGH = place("high");
    private static final List<Double> WIDTHS = List.of(32.0, 20.0, 14.0, 70.0, 18.0, 70.0, 11.0, 11.0);

    private static int place(String column) {
        return SettingRows.SCHEMA.names().indexOf(column);
    }

    void write(Workbook workbook, WordLists lists) throws IOException {
        Worksheet sheet = workbook.newWorksheet(NAME);
        for (int c = 0; c < COLUMNS.size(); c++) {
            sheet.value(0, c, COLUMNS.get(c).name());
            sheet.comment(0, c, COLUMNS.get(c).meaning());
            sheet.width(c, WIDTHS.get(c));
            sheet.style(0, c)
                    .bold()
                    .fontColor(c == VALUE ? Tone.PAPER.rgb() : Tone.INK.rgb())
                    .fillColor(c == VALUE ? Tone.FULL_FLANGE.rgb() : Tone.LINE.rgb())
                    .set();
        }
        int r = 1;
        for (Choice choice : Choice.values()) {
            choice(sheet, r++, choice, lists);
        }
        for (Setting setting : scenario.settings().values()) {
            number(sheet, r++, setting);
        }
        sheet.freezePane(VALUE + 1, 1);
        sheet.finish();
    }

    private void choice(Worksheet sheet, int r, Choice choice, WordLists lists) {
        texts(sheet, r, choice.key(), "", choice.meaning(), "", "");
        sheet.value(r, VALUE, scenario.choice(choice));
        if (!choice.allowed().isEmpty()) {
            lists.pick(sheet.range(r, VALUE, r, VALUE), choice.allowed(), false, choice.key());
        }
    }

    private static void number(Worksheet sheet, int r, Setting setting) {
        Scalar scalar = setting.scalar();
        texts(
                sheet,
                r,
                scalar.key(),
                scalar.unit(),
                scalar.meaning(),
                setting.origin().basis().word(),
                setting.origin().source());
        amount(sheet, r, VALUE, scalar, setting.value());
        setting.range().ifPresent(range -> {
            amount(sheet, r, LOW, scalar, range.low());
            amount(sheet, r, HIGH, scalar, range.high());
        });
    }

    private static void amount(Worksheet sheet, int r, int c, Scalar scalar, double value) {
        TableSheet.number(sheet, r, c, CsvText.cell(value));
        sheet.style(r, c)
                .format(format(scalar, value))
                .horizontalAlignment("right")
                .set();
    }

    /** Shares as percent, which is how they are typed over. */
    private static String format(Scalar scalar, double value) {
        if (!scalar.unit().startsWith("fraction")) {
            return "General";
        }
        double percent = value * 100;
        return Math.abs(percent - Math.rint(percent)) < 1e-9 ? "0%" : "0.0##%";
    }

    private static void texts(Worksheet sheet, int r, String... texts) {
        int c = 0;
        for (String text : texts) {
            if (c == VALUE) {
                c++;
            }
            if (!text.isEmpty()) {
                sheet.value(r, c, text);
                sheet.style(r, c).format("@").set();
            }
            c++;
        }
    }
}
