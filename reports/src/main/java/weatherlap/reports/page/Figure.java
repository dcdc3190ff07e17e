package weatherlap.reports.page;

import weatherlap.charts.Picture;

/**
 * A picture on a page.
 *
 * @param name stem of its file
 * @param title its heading
 * @param message what it shows, in sentences
 * @param svg the picture; made by {@code weatherlap.charts}, so safe to stand in a page as it is
 */
public record Figure(String name, String title, String message, String svg) {
    public static Figure of(Picture picture) {
        return new Figure(picture.name(), picture.title(), picture.message(), picture.svg());
    }
}
