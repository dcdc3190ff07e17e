package weatherlap.datasets.shop;

import java.util.Optional;

/**
 * The head of a sheet; what is absent is a blank line to fill in. All of it is text, to be escaped where it is shown.
 *
 * @param name at most 100 characters
 * @param phone at most 40
 * @param license number under which the shop is licensed or registered, at most 60
 * @param address at most 300; may hold line breaks
 */
public record Letterhead(
        Optional<String> name,
        Optional<String> phone,
        Optional<String> license,
        Optional<String> address,
        Optional<Logo> logo) {
    static final Letterhead BLANK =
            new Letterhead(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
