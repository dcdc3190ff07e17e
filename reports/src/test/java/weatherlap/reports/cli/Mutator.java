package weatherlap.reports.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Spoils the bytes of a good file a little, or a cell of it cleverly; the same seed spoils it in the same way. */
final class Mutator {
    private static final List<String> CELLS = List.of(
            "",
            " ",
            "0",
            "-0",
            "-1",
            "1e308",
            "1e-308",
            "1e999",
            "NaN",
            "Infinity",
            "0x1p3",
            "1,5",
            "1.000.000",
            "99999999999999",
            "\"",
            "\"\"",
            "\"\"\"",
            "'",
            "=1+1",
            "@SUM(A1)",
            "<script>alert(1)</script>",
            "</svg>",
            "../../x",
            "/etc/passwd",
            "con",
            "\u0000",
            "\u202E",
            "\uFEFF",
            "\uD83D\uDE00",
            "\u0660\u0661",
            "null",
            "true",
            "2024-02-30",
            "9".repeat(400),
            "x".repeat(25_000),
            "${1+1}",
            "%s%n",
            "&amp;",
            ";",
            "\t",
            "\n",
            "\r",
            "picture",
            "insert",
            "unknown",
            "vinyl_siding",
            "full_flange",
            "national");

    private final SplittableRandom random;

    Mutator(long seed) {
        random = new SplittableRandom(seed);
    }

    byte[] spoil(byte[] good) {
        byte[] bytes = good;
        int times = 1 + random.nextInt(3);
        for (int i = 0; i < times; i++) {
            bytes = random.nextInt(4) == 0 ? bytes(bytes) : text(new String(bytes, StandardCharsets.UTF_8));
        }
        return bytes;
    }

    private byte[] bytes(byte[] good) {
        int at = random.nextInt(good.length + 1);
        int to = Math.min(good.length, at + 1 + random.nextInt(20));
        return switch (random.nextInt(5)) {
            case 0 -> Arrays.copyOf(good, at);
            case 1 -> joined(Arrays.copyOf(good, at), Arrays.copyOfRange(good, to, good.length));
            case 2 -> joined(Arrays.copyOf(good, to), Arrays.copyOfRange(good, at, good.length));
            case 3 -> joined(Arrays.copyOf(good, at), noise(), Arrays.copyOfRange(good, at, good.length));
            default -> flipped(good);
        };
    }

    private byte[] noise() {
        byte[] noise = new byte[1 + random.nextInt(8)];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) random.nextInt(256);
        }
        return noise;
    }

    private byte[] flipped(byte[] good) {
        byte[] flipped = good.clone();
        if (flipped.length > 0) {
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return flipped;
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    private byte[] text(String good) {
        List<String> lines = new ArrayList<>(Arrays.asList(good.split("\n", -1)));
        int at = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        switch (random.nextInt(8)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(other, lines.get(at));
            case 2 -> lines.set(at, lines.set(other, lines.get(at)));
            case 3 -> lines.set(at, lines.get(at) + CELLS.get(random.nextInt(CELLS.size())));
            default -> lines.set(at, cell(lines.get(at), lines.get(other)));
        }
        return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    /** A number is made a little larger or smaller as often as it is made nonsense, so that some inputs stay good. */
    private String cell(String line, String other) {
        String[] cells = line.split(",", -1);
        String[] others = other.split(",", -1);
        int at = random.nextInt(cells.length);
        boolean number = cells[at].matches("\\d{1,6}(\\.\\d{1,6})?");
        cells[at] = number && random.nextInt(4) > 0
                ? scaled(Double.parseDouble(cells[at]))
                : random.nextBoolean()
                        ? CELLS.get(random.nextInt(CELLS.size()))
                        : others[Math.min(at, others.length - 1)];
        return String.join(",", cells);
    }

    private String scaled(double value) {
        double scaled = value * (random.nextBoolean() ? random.nextDouble(0.8, 1.25) : random.nextDouble(0, 3));
        return value == Math.rint(value) ? Long.toString(Math.round(scaled)) : Double.toString(scaled);
    }
}
