package weatherlap.charts.kit;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The bundled DejaVu fonts, so that pictures and printed sheets look the same on every machine, also on one that has no
 * fonts at all.
 *
 * <p>Java2D reads its font settings once, when AWT is first touched, and fails on a machine without fonts. {@link #install}
 * therefore has to run before any other use of AWT. It is the one place outside {@code weatherlap.reports} that writes
 * files: Java2D takes fonts of its own only from a folder, so they are laid into the {@link TemporaryFolder}.
 */
public final class Fonts {

    /** Family name of the proportional font, for {@link Font}, CSS and SVG. */
    public static final String FAMILY = "DejaVu Sans";

    /** Family name of the fixed-width font. */
    public static final String MONO_FAMILY = "DejaVu Sans Mono";

    private static boolean installed;

    private Fonts() {}

    /** The bundled faces. */
    public enum Face {
        REGULAR("DejaVuSans.ttf", "DejaVu Sans", FAMILY, 400, false),
        BOLD("DejaVuSans-Bold.ttf", "DejaVu Sans Bold", FAMILY, 700, false),
        OBLIQUE("DejaVuSans-Oblique.ttf", "DejaVu Sans Oblique", FAMILY, 400, true),
        MONO("DejaVuSansMono.ttf", "DejaVu Sans Mono", MONO_FAMILY, 400, false);

        private final String file;
        private final String fullName;
        private final String family;
        private final int weight;
        private final boolean oblique;

        Face(String file, String fullName, String family, int weight, boolean oblique) {
            this.file = file;
            this.fullName = fullName;
            this.family = family;
            this.weight = weight;
            this.oblique = oblique;
        }

        /** Family name, as in CSS {@code font-family}. */
        public String family() {
            return family;
        }

        /** Weight as in CSS {@code font-weight}: 400 or 700. */
        public int weight() {
            return weight;
        }

        /** Whether the face slants. */
        public boolean oblique() {
            return oblique;
        }

        /** The whole TrueType file, for embedding in a PDF or a page. A new array at each call. */
        public byte[] bytes() {
            return resource(file);
        }
    }

    /** The licence of the fonts, to be passed on with every document that embeds them whole. */
    public static String licence() {
        return new String(resource("LICENSE"), StandardCharsets.UTF_8);
    }

    /**
     * Makes the bundled fonts the ones Java2D draws with. Call it before anything touches AWT; calling it again does
     * nothing. If AWT had already been started with fonts of the machine, the bundled ones are registered beside them.
     *
     * @throws UncheckedIOException if the temporary folder cannot be written
     * @throws IllegalStateException if Java2D does not know the bundled fonts afterwards
     */
    public static synchronized void install() {
        if (installed) {
            return;
        }
        try {
            useOnlyBundledFonts();
            if (!known()) {
                registerBesideOthers();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "no folder could be made in the temporary folder " + System.getProperty("java.io.tmpdir")
                            + " for the bundled fonts (name another with java -Djava.io.tmpdir=…)",
                    e);
        }
        if (!known()) {
            throw new IllegalStateException("Java2D does not know the bundled font " + FAMILY);
        }
        installed = true;
    }

    private static void useOnlyBundledFonts() throws IOException {
        System.setProperty("java.awt.headless", "true");
        Path folder = Files.createDirectory(TemporaryFolder.ofProcess().resolve("fonts"));
        for (Face face : Face.values()) {
            Files.write(folder.resolve(face.file), face.bytes());
        }
        Path configuration = folder.resolve("fontconfig.properties");
        Files.writeString(configuration, fontConfiguration(folder), StandardCharsets.ISO_8859_1);
        System.setProperty("sun.awt.fontconfig", configuration.toString());
        System.setProperty("sun.java2d.fontpath", folder.toString());
    }

    /** Maps the five logical fonts of Java to bundled faces, in the format of the JDK's {@code fontconfig.properties}. */
    private static String fontConfiguration(Path folder) {
        StringBuilder lines = new StringBuilder("version=1\nsequence.allfonts=latin-1\n");
        for (String logical : List.of("dialog", "sansserif", "serif")) {
            mapStyles(lines, logical, Face.REGULAR, Face.BOLD, Face.OBLIQUE);
        }
        for (String logical : List.of("dialoginput", "monospaced")) {
            mapStyles(lines, logical, Face.MONO, Face.MONO, Face.MONO);
        }
        for (Face face : Face.values()) {
            String path = folder.resolve(face.file).toString().replace('\\', '/');
            lines.append("filename.%s=%s%n".formatted(face.fullName.replace(' ', '_'), path));
        }
        return lines.toString();
    }

    private static void mapStyles(StringBuilder lines, String logical, Face plain, Face bold, Face italic) {
        Map<String, Face> styles = Map.of("plain", plain, "bold", bold, "italic", italic, "bolditalic", bold);
        styles.forEach((style, face) -> lines.append("%s.%s.latin-1=%s%n".formatted(logical, style, face.fullName)));
    }

    /** A font that is not known has the name of another. */
    private static boolean known() {
        return new Font(FAMILY, Font.PLAIN, 1).getFamily(Locale.ROOT).equals(FAMILY);
    }

    private static void registerBesideOthers() throws IOException {
        for (Face face : Face.values()) {
            try {
                GraphicsEnvironment.getLocalGraphicsEnvironment()
                        .registerFont(Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(face.bytes())));
            } catch (FontFormatException e) {
                throw new IllegalStateException("the bundled font " + face.file + " is damaged", e);
            }
        }
    }

    private static byte[] resource(String file) {
        try (InputStream in = Fonts.class.getResourceAsStream("fonts/" + file)) {
            if (in == null) {
                throw new IllegalStateException("the bundled font file " + file + " is missing from the jar");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font file " + file + " could not be read", e);
        }
    }
}
