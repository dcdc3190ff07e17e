package weatherlap.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;

class EachTest {
    /** Reference: the streams of the JDK. */
    @Property(tries = 50)
    void givesWhatAStreamGives(@ForAll @Size(max = 20) List<Integer> numbers) {
        assertThat(Each.of(numbers, n -> "n" + n))
                .isEqualTo(numbers.stream().map(n -> "n" + n).toList());
        assertThat(Each.where(numbers, n -> n > 0))
                .isEqualTo(numbers.stream().filter(n -> n > 0).toList());
        assertThat(Each.any(numbers, n -> n > 0)).isEqualTo(numbers.stream().anyMatch(n -> n > 0));
        assertThat(Each.upTo(numbers.size(), n -> n * n))
                .isEqualTo(
                        IntStream.range(0, numbers.size()).mapToObj(n -> n * n).toList());
        assertThat(Sum.of(numbers, n -> n / 3.0))
                .isEqualTo(numbers.stream().mapToDouble(n -> n / 3.0).sum());
    }

    @Property(tries = 5)
    void givesListsThatStayAsTheyAre(@ForAll @Size(min = 1, max = 5) List<Integer> numbers) {
        List<Integer> made = Each.of(numbers, n -> n);
        assertThatThrownBy(() -> made.set(0, 1)).isInstanceOf(UnsupportedOperationException.class);
        assertThat(List.copyOf(made)).isSameAs(made);
    }
}
