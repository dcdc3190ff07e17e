package weatherlap.analysis.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobItem;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobStocks;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.datasets.madeup.MoneyMaker;
import weatherlap.datasets.madeup.ShopMoney;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.method.Method;

/** Made-up shops whose waste, prices and margin are known. */
class MoneyFitterTest {
    private static final AssumptionTables TABLES = AssumptionTables.bundled();
    private static final Assumptions BUNDLED = TABLES.assumptions();
    private static final JobStocks STOCKS = new JobStocks(BUNDLED, JobHouses.unmeasured());

    private static List<JobRecord> made(ShopMoney shop, int jobs, long seed) {
        MoneyMaker money = new MoneyMaker(BUNDLED, shop, STOCKS, seed);
        return new JobMaker(BUNDLED, MadeShop.drawn(BUNDLED, 0.1, seed), 0.15, 0, seed)
                .jobs(jobs).stream().map(money::paid).toList();
    }

    /** By hand: four pairs twice as high as foreseen; s² = 4 · 0.01/7, n/s² = 700, 1/τ² = 100, ln F = (700/800)(ln 2 + s²/2). */
    @Test
    void aLevelIsShrunkAsFarAsItsPairsLeaveItOpen() {
        Level.Pair twice = new Level.Pair(20, 10);
        Level level = Level.of(List.of(twice, twice, twice, twice), 0.1);
        double variance = 0.04 / 7;
        assertThat(level.factor()).isCloseTo(Math.exp(700.0 / 800 * (Math.log(2) + variance / 2)), within(1e-9));
        assertThat(level.error()).isCloseTo(Math.sqrt(1 / 800.0), within(1e-9));
        assertThat(Level.of(List.of(), 0.1).factor()).isOne();
    }

    /** Twelve shops of ninety jobs: the 90 % intervals of prices, units and margin hold the truth about nine times in ten. */
    @Test
    void intervalsHoldTheTruth() {
        int held = 0;
        int asked = 0;
        for (long seed = 1; seed <= 12; seed++) {
            ShopMoney shop = ShopMoney.drawn(BUNDLED, seed);
            MoneyFit fit = MoneyFitter.fit(BUNDLED, made(shop, 90, seed), STOCKS, job -> 0);
            for (ItemFit item : fit.items()) {
                held += holds(item.paid(), shop.prices().get(item.item().id()));
                double waste = shop.waste().get(item.item().id());
                held += item.lowWaste() <= waste && waste <= item.highWaste() ? 1 : 0;
                asked += 2;
            }
            for (Map.Entry<Method, Level> units : fit.units().entrySet()) {
                held += holds(units.getValue(), shop.units().get(units.getKey()));
                asked++;
            }
            MoneyFit.Margin margin = fit.margin().orElseThrow();
            held += margin.low() <= shop.margin() && shop.margin() <= margin.high() ? 1 : 0;
            asked++;
        }
        assertThat(asked).isGreaterThan(400);
        assertThat((double) held / asked).isBetween(0.85, 0.96);
    }

    private static int holds(Level level, double truth) {
        return level.low() <= truth && truth <= level.high() ? 1 : 0;
    }

    /** Ten rolls of tape typed as a hundred move nothing, and are named. */
    @Test
    void aGrossAmountIsSetAsideByName() {
        ShopMoney shop = ShopMoney.drawn(BUNDLED, 3);
        List<JobRecord> jobs = new ArrayList<>(made(shop, 90, 3));
        MoneyFit clean = MoneyFitter.fit(BUNDLED, jobs, STOCKS, job -> 0);
        int place = 0;
        while (jobs.get(place).money().items().stream()
                .noneMatch(item -> item.id().equals("foam"))) {
            place++;
        }
        JobRecord typed = jobs.get(place);
        jobs.set(
                place,
                typed.with(typed.money()
                        .with(typed.money().items().stream()
                                .map(item -> item.id().equals("foam") ? tenfold(item) : item)
                                .toList())));
        MoneyFit fit = MoneyFitter.fit(BUNDLED, jobs, STOCKS, job -> 0);
        assertThat(fit.aside())
                .anyMatch(row -> row.job().id().equals(typed.id()) && row.what().equals("foam, packages"));
        assertThat(foam(fit).wasteFraction()).isCloseTo(foam(clean).wasteFraction(), within(0.02));
    }

    private static JobItem tenfold(JobItem item) {
        return new JobItem(
                item.id(),
                item.estimated(),
                OptionalDouble.of(10 * item.used().orElseThrow()),
                OptionalDouble.of(10 * item.paidUsd().orElseThrow()));
    }

    private static ItemFit foam(MoneyFit fit) {
        return fit.items().stream()
                .filter(item -> item.item().id().equals("foam"))
                .findFirst()
                .orElseThrow();
    }

    /** Where nobody writes down half a tube, the half that is left in the last one is no waste. */
    @Test
    void wholePackagesAreNoWaste() {
        List<JobRecord> jobs = made(ShopMoney.drawn(BUNDLED, 5), 200, 5).stream()
                .map(job -> job.with(job.money()
                        .with(job.money().items().stream()
                                .map(item -> new JobItem(
                                        item.id(),
                                        item.estimated(),
                                        OptionalDouble.of(Math.ceil(item.used().orElseThrow())),
                                        item.paidUsd()))
                                .toList())))
                .toList();
        ItemFit sealant = MoneyFitter.fit(BUNDLED, jobs, STOCKS, job -> 0).items().stream()
                .filter(item -> item.item().id().equals("sealant"))
                .findFirst()
                .orElseThrow();
        assertThat(sealant.whole()).isTrue();
        assertThat(sealant.wasteFraction())
                .isCloseTo(ShopMoney.drawn(BUNDLED, 5).waste().get("sealant"), within(0.06));
    }

    @Test
    void tablesSayWhatTheyRestOnAndReadBack() {
        ShopMoney shop = ShopMoney.drawn(BUNDLED, 7);
        MoneyFit fit = MoneyFitter.fit(BUNDLED, made(shop, 120, 7), STOCKS, job -> 0);
        AssumptionTables fitted = FittedMoney.of(TABLES, fit);
        assertThat(fitted.texts().get("materials.csv")).contains(",own records,\"the shop's own records of ");
        assertThat(fitted.texts().get("units.csv")).contains(",own records,");
        assertThat(fitted.assumptions()
                        .scenario()
                        .settings()
                        .get(Scalar.GROSS_MARGIN)
                        .origin()
                        .basis())
                .isEqualTo(Basis.OWN_RECORDS);
        assertThat(fitted.assumptions().scenario().value(Scalar.GROSS_MARGIN)).isCloseTo(shop.margin(), within(0.02));
        assertThat(FittedMoney.isFitted(BUNDLED)).isFalse();
        assertThat(FittedMoney.isFitted(fitted.assumptions())).isTrue();
        assertThat(fitted.assumptions().materials())
                .extracting(Material::id)
                .isEqualTo(BUNDLED.materials().stream().map(Material::id).toList());
    }

    /** Without rows of items, what is left of the material when its items are taken off is the units. */
    @Test
    void totalsAloneMoveTheUnits() {
        ShopMoney shop = ShopMoney.drawn(BUNDLED, 11);
        List<JobRecord> jobs = made(shop, 200, 11).stream()
                .map(job -> job.with(job.money().with(List.of())))
                .toList();
        MoneyFit fit = MoneyFitter.fit(BUNDLED, jobs, STOCKS, job -> 0);
        assertThat(fit.items()).isEmpty();
        fit.units().forEach((method, level) -> assertThat(level.factor())
                .isCloseTo(shop.units().get(method), within(0.06)));
    }
}
