package weatherlap.charts.kit;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.annotations.XYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/** Direct labels and marks over a plot, painted in px once the plot knows where its data lie. */
@FunctionalInterface
public interface Layer {

    void paint(Graphics2D g, Scales scales);

    /** The layer as what a plot takes. */
    default XYAnnotation annotation() {
        return new Annotation(this);
    }

    /** Hands a layer the scales of the plot it stands on. */
    @SuppressWarnings("serial")
    final class Annotation extends AbstractXYAnnotation {

        private final transient Layer layer;

        private Annotation(Layer layer) {
            this.layer = layer;
        }

        @Override
        public void draw(
                Graphics2D g,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis domain,
                ValueAxis range,
                int rendererIndex,
                PlotRenderingInfo info) {
            boolean rows = plot.getOrientation() == PlotOrientation.HORIZONTAL;
            RectangleEdge domainEdge =
                    Plot.resolveDomainAxisLocation(plot.getDomainAxisLocation(), plot.getOrientation());
            RectangleEdge rangeEdge = Plot.resolveRangeAxisLocation(plot.getRangeAxisLocation(), plot.getOrientation());
            layer.paint(
                    g,
                    rows
                            ? new Scales(
                                    area,
                                    v -> range.valueToJava2D(v, area, rangeEdge),
                                    v -> domain.valueToJava2D(v, area, domainEdge))
                            : new Scales(
                                    area,
                                    v -> domain.valueToJava2D(v, area, domainEdge),
                                    v -> range.valueToJava2D(v, area, rangeEdge)));
        }
    }
}
