package weatherlap.reports.handout;

import java.util.List;
import java.util.Optional;
import weatherlap.datasets.shop.Letterhead;
import weatherlap.datasets.shop.Shop;
import weatherlap.reports.page.LogoMark;
import weatherlap.reports.words.FamilyWords;

/**
 * The shop at the head and at the foot of a proposal. What it has not said is left empty, for a line to fill in by hand.
 *
 * @param logo markup that is safe to stand in a page; empty: none
 * @param name untrusted text, as all that follows
 * @param address in lines
 * @param holds how long its prices hold
 * @param warranty in the shop's words; empty: it has none to print
 */
public record ShopHead(
        String logo,
        String name,
        String phone,
        String license,
        List<String> address,
        String holds,
        List<String> warranty) {
    private static final double LOGO_WIDTH_PX = 190;
    private static final double LOGO_HEIGHT_PX = 58;
    private static final int LONGEST_WARRANTY = 360;

    public ShopHead {
        address = List.copyOf(address);
        warranty = List.copyOf(warranty);
    }

    /** @param prices how many stand on the sheet */
    static ShopHead of(Shop shop, int prices, FamilyWords words, Density density) {
        Letterhead head = shop.letterhead();
        String name = density.printed(head.name().orElse(""));
        return new ShopHead(
                head.logo()
                        .map(logo -> LogoMark.of(logo, LOGO_WIDTH_PX, LOGO_HEIGHT_PX, name))
                        .orElse(""),
                name,
                density.printed(head.phone().orElse("")),
                density.printed(head.license().orElse("")),
                lines(head.address().map(density::printed)),
                shop.terms()
                        .priceHoldsDays()
                        .map(days -> words.count(prices, "sign.holds", words.count(days, "days")))
                        .orElseGet(() -> words.count(prices, "sign.blank")),
                lines(shop.terms().warranty().map(text -> density.cut(text, LONGEST_WARRANTY))));
    }

    private static List<String> lines(Optional<String> text) {
        return text.map(whole -> whole.lines().map(String::strip).toList()).orElse(List.of());
    }
}
