package weatherlap.datasets.shop;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * A PNG file as a logo: of sane size, whole, and without anything but its picture. Its chunks are copied, those that a picture needs; the
 * texts, profiles and animations between them are left out.
 *
 * @see "Portable Network Graphics (PNG) Specification, third edition, W3C: 5 Datastream structure, 11 Chunk specifications"
 */
final class PngLogo {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final List<String> KEPT = List.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
    private static final long MOST_PIXELS = 4_000_000;

    private PngLogo() {}

    static boolean isPng(byte[] file) {
        return file.length >= SIGNATURE.length
                && Arrays.equals(SIGNATURE, 0, SIGNATURE.length, file, 0, SIGNATURE.length);
    }

    /** @throws LogoRefused if it is not whole or not of a size that a letterhead needs */
    static Logo of(byte[] file) throws LogoRefused {
        ByteBuffer in = ByteBuffer.wrap(file).position(SIGNATURE.length);
        ByteArrayOutputStream clean = new ByteArrayOutputStream();
        clean.writeBytes(SIGNATURE);
        String type = "";
        int width = 0;
        int height = 0;
        while (!type.equals("IEND")) {
            ByteBuffer chunk = chunk(in);
            String before = type;
            type = type(chunk);
            if (before.isEmpty()) {
                width = sized(chunk, type, 8);
                height = sized(chunk, type, 12);
                refuseHuge(width, height);
            }
            if (KEPT.contains(type)) {
                clean.writeBytes(chunk.array());
            }
        }
        byte[] picture = clean.toByteArray();
        refuseBroken(picture);
        return Logo.Png.of(width, height, picture);
    }

    /** The next chunk whole: length, type, data, check sum. */
    private static ByteBuffer chunk(ByteBuffer in) throws LogoRefused {
        int length = in.remaining() >= 12 ? in.getInt(in.position()) : -1;
        if (length < 0 || length > in.remaining() - 12) {
            throw new LogoRefused("is a PNG file cut short");
        }
        byte[] whole = new byte[length + 12];
        in.get(whole);
        CRC32 sum = new CRC32();
        sum.update(whole, 4, length + 4);
        ByteBuffer chunk = ByteBuffer.wrap(whole);
        if (chunk.getInt(length + 8) != (int) sum.getValue()) {
            throw new LogoRefused("is a PNG file with a damaged part");
        }
        return chunk;
    }

    private static String type(ByteBuffer chunk) {
        return new String(chunk.array(), 4, 4, StandardCharsets.ISO_8859_1);
    }

    private static int sized(ByteBuffer chunk, String type, int at) throws LogoRefused {
        if (!type.equals("IHDR") || chunk.capacity() != 25) {
            throw new LogoRefused("is not a PNG picture: its size does not come first");
        }
        return chunk.getInt(at);
    }

    private static void refuseHuge(int width, int height) throws LogoRefused {
        boolean sane = width > 0
                && height > 0
                && width <= Logo.LONGEST_SIDE
                && height <= Logo.LONGEST_SIDE
                && (long) width * height <= MOST_PIXELS;
        if (!sane) {
            throw new LogoRefused("has " + Integer.toUnsignedString(width) + " x " + Integer.toUnsignedString(height)
                    + " pixels (expected: sides of at most " + Logo.LONGEST_SIDE + " and at most " + MOST_PIXELS
                    + " pixels)");
        }
    }

    private static void refuseBroken(byte[] picture) throws LogoRefused {
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(picture))) {
            reader.setInput(in, true, true);
            reader.read(0);
        } catch (IOException | RuntimeException e) {
            throw new LogoRefused("is a PNG file whose picture cannot be read");
        } finally {
            reader.dispose();
        }
    }
}
