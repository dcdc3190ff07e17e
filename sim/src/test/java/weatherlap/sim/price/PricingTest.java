package weatherlap.sim.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

class PricingTest {
    private static Pricing margin(double margin) {
        return new Pricing(Pricing.Way.GROSS_MARGIN, margin, 0, 0);
    }

    /** Validation. A trade magazine: a 50 % mark-up on cost is a 33 % margin on price, 67 % is 40 %. */
    @ParameterizedTest
    @CsvSource({"0.3333333333, 1.50", "0.40, 1.6667"})
    void aMarginIsNotAMarkUp(double margin, double priceOverCost) {
        assertThat(margin(margin).priceUsd(new JobCost(0, 1, 0, 0))).isCloseTo(priceOverCost, within(1e-4));
    }

    /**
     * Validation. Worked by hand: a carpenter at the BLS median of May 2023, 27.09 USD/h, with the construction multiplier of June
     * 2022 (30.2 % of compensation is not wages: 1.433), costs 38.81997 USD/h; 5.3 h and 420 USD of material at a margin of 40 % sell for 1,042.91.
     */
    @Test
    void workedByMargin() {
        assertThat(margin(0.4).priceUsd(worked())).isCloseTo(1042.91, within(0.005));
    }

    /** Validation. The same job with 28.125 USD/h of overhead and 8 % net on the price sells for 842.18. */
    @Test
    void workedByOverheadAndNet() {
        Pricing pricing = new Pricing(Pricing.Way.OVERHEAD_AND_NET, 0.08, 0, 28.125);
        assertThat(pricing.priceUsd(worked())).isCloseTo(842.18, within(0.005));
        assertThat(pricing.netProfitUsd(842.18, worked())).isCloseTo(0.08 * 842.18, within(0.01));
    }

    private static JobCost worked() {
        return new JobCost(5.3 * carpenter(1), 420, 0, 5.3);
    }

    private static double carpenter(int crew) {
        double burden = 0.433;
        Origin origin = new Origin("wages.csv", "national", Basis.DATASET, "US Bureau of Labor Statistics");
        List<Wage> wages = List.of(
                new Wage("national", "carpenter", 27.09, burden, origin),
                new Wage("national", "helper", 21.05, burden, origin));
        return CrewRate.usdPerPersonHour(wages, crew).value();
    }

    /** Validation. 27.09 USD/h with the multiplier is 38.82 (computed from the two published figures). */
    @Test
    void aPersonHourOfTheCrew() {
        assertThat(carpenter(1)).isCloseTo(38.81997, within(1e-9));
        assertThat(carpenter(3)).isCloseTo((27.09 + 2 * 21.05) / 3 * 1.433, within(1e-9));
    }

    @Test
    void aCrewNeedsItsRoles() {
        assertThatThrownBy(() -> CrewRate.usdPerPersonHour(List.of(), 1)).hasMessageContaining("carpenter");
    }

    /** A short job with dear material against a long one with cheap: equal direct cost, so margin sees no difference. */
    @Test
    void theTwoWaysCanRankDifferently() {
        JobCost fast = new JobCost(100, 610, 0, 2);
        JobCost slow = new JobCost(300, 400, 0, 6);
        Pricing net = new Pricing(Pricing.Way.OVERHEAD_AND_NET, 0.08, 0, 45);
        assertThat(margin(0.4).priceUsd(fast)).isGreaterThan(margin(0.4).priceUsd(slow));
        assertThat(net.priceUsd(fast)).isLessThan(net.priceUsd(slow));
    }

    @Property
    void theMarginIsKeptAfterServiceAndWarranty(
            @ForAll @DoubleRange(min = 0, max = 0.7) double margin,
            @ForAll @DoubleRange(min = 0, max = 0.2) double service,
            @ForAll @DoubleRange(min = 1, max = 1e4) double labour) {
        Pricing pricing = new Pricing(Pricing.Way.GROSS_MARGIN, margin, service, 50);
        JobCost cost = new JobCost(labour, 500, 30, 9);
        double price = pricing.priceUsd(cost);
        assertThat(pricing.grossProfitUsd(price, cost) / price).isCloseTo(margin, within(1e-9));
        assertThat(pricing.fullCostUsd(price, cost))
                .isCloseTo(labour + 500 + 30 + service * price + 9 * 50, within(1e-6 * price));
    }

    @Test
    void aPriceCannotBeAllProfit() {
        assertThatThrownBy(() -> new Pricing(Pricing.Way.GROSS_MARGIN, 0.95, 0.05, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
