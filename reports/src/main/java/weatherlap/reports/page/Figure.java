package weatherlap.reports.page;

import weatherlap.charts.kit.Picture;

/**
 * A picture on a page.
 *
 * @param name stem of its file
 * @param title its heading
 * @param message what it shows, in sentences
 * @param svg the picture; made by {@code weatherlap.charts}, so safe to stand in a page as it is
 * @param from files and columns that hold what it shows; empty where the page says it otherwise
 */
public record Figure(String name, String title, String message, String svg, String from) {
    public static Figure of(Picture picture) {
        return of(picture, "");
    }

    public static Figure of(Picture picture, String from) {
        return new Figure(picture.name(), picture.title(), picture.message(), picture.svg(), from);
    }
}
