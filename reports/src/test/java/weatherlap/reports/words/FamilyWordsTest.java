package weatherlap.reports.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Room;
import weatherlap.sim.method.Method;

class FamilyWordsTest {
    private static final FamilyWords ENGLISH = FamilyWords.in(Language.EN);
    private static final FamilyWords SPANISH = FamilyWords.in(Language.ES);

    /** Sentences that are the same for every house. */
    private static List<String> prose() {
        return ENGLISH.keys().stream()
                .filter(key ->
                        key.matches("method\\..*\\.(what|mends|keeps|costs|adds).*|uncertain\\.[a-z]*|care\\.[a-z_]*"
                                + "|behind\\.(unseen|nothing)|fault\\..*\\.happens|leaks\\.(records|judgement)"))
                .filter(key -> !key.endsWith("heading"))
                .map(ENGLISH::of)
                .map(line -> line.endsWith(".") ? line : line + ".")
                .toList();
    }

    @Test
    void readsLikeANewspaper() {
        assertThat(prose()).hasSizeGreaterThan(40);
        assertThat(ReadingGrade.of(String.join(" ", prose()))).isLessThan(8);
        assertThat(prose())
                .allSatisfy(line -> assertThat(ReadingGrade.of(line)).as(line).isLessThan(12));
    }

    /** By hand: 10 words, 1 sentence, 12 syllables: 3.9 + 14.16 − 15.59. */
    @Test
    void theGradeIsThatOfTheFormula() {
        assertThat(ReadingGrade.of("The rain ran down the wall and into the window."))
                .isCloseTo(0.39 * 10 + 11.8 * 1.2 - 15.59, within(1e-9));
        assertThat(ReadingGrade.syllables("window")).isEqualTo(2);
        assertThat(ReadingGrade.syllables("frame")).isEqualTo(1);
        assertThat(ReadingGrade.syllables("judgement")).isEqualTo(3); // one too many: the count errs to the strict side
        assertThat(ReadingGrade.of("Municipal authorities predominantly administer fenestration requirements."))
                .isGreaterThan(20);
    }

    @Test
    void sellsNothingAndFrightensNobody() {
        String all = String.join(" ", prose());
        assertThat(List.of(
                        "best",
                        "amazing",
                        "beautiful",
                        "save",
                        "deal",
                        "guarantee",
                        "danger",
                        "disaster",
                        "never",
                        "must-have"))
                .allSatisfy(
                        word -> assertThat(all.toLowerCase(Locale.ROOT)).doesNotContainPattern("\\b" + word + "\\b"));
        assertThat(all).doesNotContain("!");
        assertThat(ENGLISH.keys().stream().map(ENGLISH::of).collect(Collectors.joining(" ")))
                .doesNotContain("trial run", "8 times in 10");
    }

    /** All begin to say what they mend, cannot mend and cost; nobody is told that laps behind masonry are mended. */
    @ParameterizedTest
    @EnumSource(Method.class)
    void everyMethodGetsItsDue(Method method) {
        for (String behind : List.of("siding", "masonry")) {
            assertThat(ENGLISH.name(method, "mends." + behind)).startsWith("Can mend: ");
            assertThat(ENGLISH.name(method, "keeps." + behind)).startsWith("Cannot mend: ");
            assertThat(SPANISH.name(method, "mends." + behind)).startsWith("Puede arreglar: ");
            assertThat(SPANISH.name(method, "keeps." + behind)).startsWith("No puede arreglar: ");
        }
        assertThat(ENGLISH.name(method, "costs")).startsWith("Costs you: ");
        assertThat(SPANISH.name(method, "costs")).startsWith("Le cuesta: ");
        assertThat(ENGLISH.name(method, "mends.masonry")).doesNotContain("bad laps");
    }

    /** The same keys, and in each message the same places to fill, however they are ordered. */
    @Test
    void bothLanguagesSayTheSameThings() {
        assertThat(SPANISH.keys()).isEqualTo(ENGLISH.keys());
        assertThat(ENGLISH.keys()).allSatisfy(key -> {
            assertThat(places(SPANISH.of(key))).as(key).isEqualTo(places(ENGLISH.of(key)));
            for (FamilyWords words : List.of(ENGLISH, SPANISH)) {
                assertThat(new MessageFormat(words.of(key), Locale.ROOT).format(new Object[] {"a", "b", "c", "d"}))
                        .as(key)
                        .doesNotContain("{", "'");
            }
        });
        assertThat(SPANISH.of("title")).isNotEqualTo(ENGLISH.of("title"));
    }

    @Test
    void spanishSaysItsAndOtherwiseBeforeAnI() {
        assertThat(SPANISH.list(List.of("con aleta", "inserto"))).isEqualTo("con aleta e inserto");
        assertThat(SPANISH.list(List.of("inserto", "con aleta", "hilo"))).isEqualTo("inserto, con aleta e hilo");
        assertThat(SPANISH.list(List.of("inserto", "con aleta"))).isEqualTo("inserto y con aleta");
        assertThat(ENGLISH.list(List.of("full-flange", "insert"))).isEqualTo("full-flange and insert");
    }

    /** What drips from a ceiling, the wood of conifers and the sill of a door are other words than those of a wall and a window. */
    @Test
    void spanishNamesThingsAsTheTradeDoes() {
        assertThat(SPANISH.keys())
                .allSatisfy(
                        key -> assertThat(SPANISH.of(key)).as(key).doesNotContain("gotera", "madera blanda", "umbral"));
    }

    private static Set<String> places(String message) {
        return Pattern.compile("\\{\\d}")
                .matcher(message)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyConstantThatASheetNamesHasAName() {
        Stream.of(Cladding.values(), FrameMaterial.values(), Operation.values(), Room.values(), Method.values())
                .flatMap(Stream::of)
                .forEach(
                        constant -> assertThat(SPANISH.name((Enum<?>) constant)).isNotBlank());
    }

    /** A message is asked for by its whole key, by it without its number, or by the first part of it. */
    @Test
    void noMessageIsLeftThatNothingAsksFor() throws IOException {
        String sources;
        try (Stream<Path> files = Files.walk(Path.of("src/main"))) {
            sources = files.filter(file -> file.toString().matches(".*\\.(java|jte)"))
                    .map(FamilyWordsTest::text)
                    .collect(Collectors.joining());
        }
        Set<String> byName = Set.of("cladding", "framematerial", "operation", "room", "side", "method", "leakrank");
        assertThat(ENGLISH.keys()).allSatisfy(key -> {
            String first = key.substring(0, Math.max(0, key.indexOf('.')));
            String last = key.substring(0, Math.max(0, key.lastIndexOf('.')));
            assertThat(byName.contains(first)
                            || first.equals("siding")
                            || Stream.of('"' + key + '"', '"' + last + '"', '"' + last + ".\"", '"' + first + ".\"")
                                    .anyMatch(sources::contains))
                    .as(key)
                    .isTrue();
        });
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
