package weatherlap.datasets.shop;

/**
 * What a shop says of itself in {@code shop.toml}. Nothing of it is invented: what the file leaves out is absent.
 *
 * @param letterhead who it is
 * @param terms of its prices
 * @param season what it has to work with
 */
public record Shop(Letterhead letterhead, Terms terms, OwnSeason season) {
    /** A shop that says nothing. */
    public static final Shop UNNAMED = new Shop(Letterhead.BLANK, Terms.NONE, OwnSeason.UNKNOWN);
}
