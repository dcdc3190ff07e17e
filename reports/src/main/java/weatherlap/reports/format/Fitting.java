package weatherlap.reports.format;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;

/**
 * The roomiest of several layouts of one sheet that keeps to so many pages. Each takes a tenth of a second to lay out, so that the search
 * begins at the likeliest one, and goes on from there to the roomier while they fit, else to the tighter until one does.
 *
 * @param layouts one or more pages of XHTML, from the roomiest to the tightest
 * @param pages most of them
 */
record Fitting(List<Supplier<String>> layouts, int pages) {
    Fitting {
        layouts = List.copyOf(layouts);
    }

    /** Laid out, to be written by this thread and closed; the tightest where none fits. */
    PdfBoxRenderer searched(int likely) throws IOException {
        PdfBoxRenderer sheet = roomiest(likely);
        sheet.getSharedContext().registerWithThread(); // a layout that is closed leaves the thread without any
        return sheet;
    }

    private PdfBoxRenderer roomiest(int likely) throws IOException {
        PdfBoxRenderer sheet = laidOut(likely);
        boolean fits = fits(sheet);
        int step = fits ? -1 : 1;
        for (int next = likely + step; 0 <= next && next < layouts.size(); next += step) {
            PdfBoxRenderer other = laidOut(next);
            boolean otherFits = fits(other);
            if (fits && !otherFits) {
                other.close();
                return sheet;
            }
            sheet.close();
            sheet = other;
            if (!fits && otherFits) {
                return sheet;
            }
        }
        return sheet;
    }

    private PdfBoxRenderer laidOut(int layout) throws IOException {
        PdfBoxRenderer sheet = Pdf.renderer(Printable.inPage(layouts.get(layout).get()));
        sheet.layout();
        return sheet;
    }

    private boolean fits(PdfBoxRenderer sheet) {
        return sheet.getRootBox().getLayer().getPages().size() <= pages;
    }
}
