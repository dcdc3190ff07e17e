package weatherlap.reports.format;

import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGImage;
import java.awt.Rectangle;
import java.util.Optional;
import org.w3c.dom.Element;
import weatherlap.charts.kit.SvgDrawing;

/** Draws our own pictures straight into the sheet, and leaves all other SVG, as a shop's logo, to Batik, which knows all of it and takes longer. */
final class PictureDrawer extends BatikSVGDrawer {
    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext context, double cssWidth, double cssHeight, double dotsPerPixel) {
        Optional<SvgDrawing> drawing = SvgDrawing.of(svg);
        return drawing.isEmpty()
                ? super.buildSVGImage(svg, box, context, cssWidth, cssHeight, dotsPerPixel)
                : new Straight(drawing.get(), svg, box, context, cssWidth, cssHeight, dotsPerPixel);
    }

    /** One of ours; how large it is is reckoned as for any. */
    private static final class Straight extends BatikSVGImage {
        private final SvgDrawing drawing;
        private final Box box;
        private final double dotsPerPixel;

        Straight(
                SvgDrawing drawing,
                Element svg,
                Box box,
                CssContext context,
                double cssWidth,
                double cssHeight,
                double dotsPerPixel) {
            super(
                    svg,
                    box,
                    cssWidth,
                    cssHeight,
                    CalculatedStyle.getCSSMaxWidth(context, box),
                    CalculatedStyle.getCSSMaxHeight(context, box),
                    dotsPerPixel,
                    context);
            this.drawing = drawing;
            this.box = box;
            this.dotsPerPixel = dotsPerPixel;
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            Rectangle place = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
            double width = place.width / dotsPerPixel;
            double height = place.height / dotsPerPixel;
            double scale = Math.min(width / drawing.widthPx(), height / drawing.heightPx());
            device.drawWithGraphics((float) x, (float) y, (float) width, (float) height, graphics -> {
                graphics.scale(scale, scale);
                drawing.draw(graphics);
            });
        }
    }
}
