package weatherlap.reports.handout;

import java.util.List;
import weatherlap.reports.offer.ShopSide;
import weatherlap.reports.page.Paper;

/** The page for the salesperson alone. */
public record InsideSheet(String label, Paper paper, List<ShopSide.Sheet> choices) {
    public InsideSheet {
        choices = List.copyOf(choices);
    }
}
