package weatherlap.charts.kit;

import java.awt.Graphics2D;

/** A picture that is named and described in words of its page, such as those of another language. */
public record Captioned(Picture picture, String title, String message) implements Picture {
    @Override
    public String name() {
        return picture.name();
    }

    @Override
    public int widthPx() {
        return picture.widthPx();
    }

    @Override
    public int heightPx() {
        return picture.heightPx();
    }

    @Override
    public void draw(Graphics2D graphics) {
        picture.draw(graphics);
    }
}
