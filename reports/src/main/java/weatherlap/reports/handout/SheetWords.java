package weatherlap.reports.handout;

import weatherlap.datasets.shop.Shop;
import weatherlap.reports.offer.Prices;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Language;

/**
 * How a family's sheet speaks.
 *
 * @param words its language
 * @param shop who names the prices, and on what terms
 * @param pricesShown whether it tells them
 */
public record SheetWords(FamilyWords words, Shop shop, boolean pricesShown) {
    Prices prices() {
        return new Prices(shop.terms(), pricesShown);
    }

    /** English, with prices, of a shop that has said nothing of itself. */
    public static SheetWords plain() {
        return new SheetWords(FamilyWords.in(Language.EN), Shop.UNNAMED, true);
    }
}
