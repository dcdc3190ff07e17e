package weatherlap.reports.format;

import org.dhatim.fastexcel.BorderSide;
import org.dhatim.fastexcel.BorderStyle;
import org.dhatim.fastexcel.StyleSetter;
import weatherlap.charts.kit.Tone;

/** How a cell of a {@link CellSheet} looks. */
public enum Look {
    PLAIN {
        @Override
        void on(StyleSetter cell) {
            cell.verticalAlignment("top").wrapText(true);
        }
    },
    TITLE {
        @Override
        void on(StyleSetter cell) {
            cell.bold().fontSize(14).fontColor(Tone.INK.rgb());
        }
    },
    HEADLINE {
        @Override
        void on(StyleSetter cell) {
            cell.bold().fontSize(12).wrapText(true).verticalAlignment("top").fontColor(Tone.FULL_FLANGE_TEXT.rgb());
        }
    },
    BIG {
        @Override
        void on(StyleSetter cell) {
            cell.bold().fontSize(16).fontColor(Tone.INK.rgb());
        }
    },
    BOLD {
        @Override
        void on(StyleSetter cell) {
            cell.bold().wrapText(true).verticalAlignment("top");
        }
    },
    NOTE {
        @Override
        void on(StyleSetter cell) {
            cell.wrapText(true).verticalAlignment("top").fontColor(Tone.MUTED.rgb());
        }
    },
    /** A line of small importance over the empty cells right of it. */
    ASIDE {
        @Override
        void on(StyleSetter cell) {
            cell.fontColor(Tone.MUTED.rgb());
        }
    },
    HEADER {
        @Override
        void on(StyleSetter cell) {
            cell.bold()
                    .wrapText(true)
                    .verticalAlignment("top")
                    .fontColor(Tone.INK.rgb())
                    .fillColor(Tone.LINE.rgb())
                    .borderStyle(BorderSide.BOTTOM, BorderStyle.THIN);
        }
    },
    /** To be changed by who reads it. */
    INPUT {
        @Override
        void on(StyleSetter cell) {
            cell.bold()
                    .verticalAlignment("top")
                    .fillColor(INPUT_FILL)
                    .borderStyle(BorderStyle.THIN)
                    .borderColor(Tone.RULE.rgb());
        }
    },
    /** A number that nobody sets here, of a column of them. */
    NUMBER {
        @Override
        void on(StyleSetter cell) {
            cell.verticalAlignment("top");
        }
    };

    /** A pale yellow, that no method has. */
    private static final String INPUT_FILL = "FFF6B3";

    abstract void on(StyleSetter cell);
}
