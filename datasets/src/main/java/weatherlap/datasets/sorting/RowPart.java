package weatherlap.datasets.sorting;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Iterator;
import java.util.NoSuchElementException;
import weatherlap.datasets.table.CsvRows;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Rows;
import weatherlap.datasets.table.Schema;

/** Rows of one table that were set aside, with their lines and whether they are sound; they come back as they were. */
public final class RowPart implements Rows {
    private final Schema schema;
    private final HashMap<String, Integer> places;
    private final Scratch.Part part;
    private final DataInputStream in;
    private boolean another;

    private RowPart(Schema schema, Scratch.Part part) throws IOException {
        this.schema = schema;
        this.places = schema.places();
        this.part = part;
        in = new DataInputStream(new BufferedInputStream(part.read()));
        another = in.readBoolean();
    }

    /** Cells are shorter than the 65,535 bytes that {@code writeUTF} allows: {@link CsvRows} takes no longer ones. */
    public static Scratch.Part write(Iterator<Row> rows, Scratch scratch) {
        try {
            Scratch.Part part = scratch.begin();
            try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(part.write(), 1 << 16))) {
                while (rows.hasNext()) {
                    Row row = rows.next();
                    out.writeBoolean(true);
                    out.writeInt(row.line());
                    out.writeBoolean(row.isSound());
                    for (String cell : row.cells()) {
                        out.writeUTF(cell);
                    }
                }
                out.writeBoolean(false);
            }
            return part;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static RowPart read(Scratch.Part part, Schema schema) {
        try {
            return new RowPart(schema, part);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public boolean hasNext() {
        return another;
    }

    @Override
    public Row next() {
        if (!another) {
            throw new NoSuchElementException();
        }
        try {
            int line = in.readInt();
            boolean sound = in.readBoolean();
            String[] cells = new String[schema.columns().size()];
            for (int c = 0; c < cells.length; c++) {
                cells[c] = in.readUTF();
            }
            another = in.readBoolean();
            return new Row(schema.file(), line, places, cells, sound);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Drops the part too. */
    @Override
    public void close() {
        try (in) {
            another = false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            drop();
        }
    }

    private void drop() {
        try {
            part.drop();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
