"""How likely a lap fault stands, and what its water does, after the page of weatherlap.sim.laps."""

import math

import numpy as np

from tables import METHODS, numbers, words
from work import old_units

BARRIERS = ("housewrap", "building_paper", "none")
ERAS = ("odds_before_1960", "odds_1960_1979", "odds_1980_1999", "odds_from_2000")
PASSING = {
    "vinyl_siding": "cladding_passes",
    "aluminum_siding": "cladding_passes",
    "wood_lap": "boards_pass",
    "fiber_cement": "boards_pass",
    "brick_veneer": "brick_passes",
    "stucco": "stucco_passes",
}
LAPS = ("head_lap", "jamb_lap", "sill_lap")
POINTS = 2001
phi = np.vectorize(lambda z: 0.5 * math.erfc(-z / math.sqrt(2)), otypes=[float])


class Quality:
    """Quantiles of one belief about the share of openings with a fault: a beta of this mean and weight, or after sights."""

    def __init__(self, mean, weight, sights=(), exact=False):
        self.mean, self.cdf = mean, None
        if not 0 < mean < 1:
            return
        self._tabulate(mean * weight, (1 - mean) * weight)
        if sights:
            self._see(sights, exact)

    def _tabulate(self, alpha, beta, seen=0.0):
        """The distribution function over t = ln(θ/(1 − θ)); `seen` is the logarithm of a likelihood there."""
        tail = 40
        self.t = np.linspace(-max(tail / alpha, tail), max(tail / beta, tail), POINTS)
        # Points crowd about the middle, where short tails and long ones both matter.
        self.t = np.sinh(np.linspace(np.arcsinh(self.t[0]), np.arcsinh(self.t[-1]), POINTS))
        log_theta, log_rest = -np.logaddexp(0, -self.t), -np.logaddexp(0, self.t)
        self.theta, self.rest = np.exp(log_theta), np.exp(log_rest)
        self.log_density = alpha * log_theta + beta * log_rest + seen
        self._accumulate()

    def _accumulate(self):
        density = np.exp(self.log_density - self.log_density.max())
        mass = np.diff(self.t) * (density[1:] + density[:-1]) / 2
        self.cdf = np.concatenate(([0], np.cumsum(mass))) / mass.sum()

    def _moment(self, values):
        density = np.exp(self.log_density - self.log_density.max())
        return np.trapz(values * density, self.t) / np.trapz(density, self.t)

    def _see(self, sights, exact):
        """The posterior by quadrature; unless exact it is replaced by the beta of its mean and variance, as the program does."""
        for standing, absent in sights:
            with np.errstate(divide="ignore"):
                self.log_density = self.log_density + np.log(self.theta * standing + self.rest * absent)
        self.mean = self._moment(self.theta)
        if exact:
            self._accumulate()
            return
        spread = self._moment((self.theta - self.mean) ** 2)
        weight = min(self.mean * (1 - self.mean) / spread - 1, 1e6)
        self._tabulate(self.mean * weight, (1 - self.mean) * weight)

    def after(self, standing, absent):
        """Chance of the fault at an opening where something was seen, over all qualities."""
        if self.cdf is None or standing == absent:
            return self.mean
        return self._moment(self.theta * standing / (self.theta * standing + self.rest * absent))

    def quantiles(self, uniforms):
        if self.cdf is None:
            return np.full(uniforms.shape, self.mean)
        t = np.interp(uniforms, self.cdf, self.t)
        return 1 / (1 + np.exp(-np.maximum(t, -700)))


if not hasattr(np, "trapz"):
    np.trapz = np.trapezoid


def with_odds(probability, odds):
    return probability * odds / (probability * odds + 1 - probability)


class Beliefs:
    """Of every fault: the quality of each house (or of the crew), and the likelihood of what was seen at each opening."""

    def __init__(self, portfolio, assumptions, exact=False):
        p, a = portfolio, assumptions
        self.weight = 1 / a["house_correlation"] - 1 if a["house_correlation"] > 0 else 1e6
        self.portfolio, self.assumptions, self.known, self.exact = p, a, {}, exact
        self.first = np.concatenate(([0], np.cumsum(p.openings_in_house)))
        wet = (words(p.openings, "stain") == "yes") | (words(p.openings, "frame_condition") == "rotten")
        self.sights, self.qualities = [], []
        more = old_units(p, a)
        self.standing = {method: [p.can_stand(fault, method, more) for fault in a.faults] for method in METHODS}
        for f, fault in enumerate(a.faults):
            existing = fault["kind"] == "existing"
            self.sights.append(self._sights(f, fault, wet) if existing else None)
            self.qualities.append(self._houses(fault) if existing else [self._crew(fault)] * len(p.houses))

    def _sights(self, f, fault, wet):
        p, right = self.portfolio, self.assumptions["inspection_reliability"]
        sights = np.ones((2, len(p.openings)))
        if fault["seen_as"]:
            joint, shows = fault["seen_as"].split("=")
            reading = words(p.openings, joint, "unknown")
            shown, in_order = reading == shows, reading == "shingled"
            sights[0] = np.where(shown, right, np.where(in_order, 1 - right, 1))
            sights[1] = np.where(shown, 1 - right, np.where(in_order, right, 1))
        sights[0] *= np.where(wet, float(fault["stain_odds"]), 1)
        somehow = np.any([self.standing[method][f] for method in METHODS], axis=0)
        return np.where(somehow, sights, 1)

    def _houses(self, fault):
        sights = self.sights[-1]
        prior = [float(fault["prior_" + barrier] or 0) for barrier in BARRIERS]
        qualities = []
        for h, house in enumerate(self.portfolio.houses):
            year = float(house["year_built"])
            odds = float(fault[ERAS[int(np.searchsorted([1960, 1980, 2000], year, side="right"))]] or 1)
            barrier = house["barrier"]
            if barrier == "none" and self._shows_barrier(h):
                possible = prior[:2]
            else:
                possible = [prior[BARRIERS.index(barrier)]] if barrier in BARRIERS else prior
            mean = sum(with_odds(share, odds) for share in possible) / len(possible)
            here = sights[:, self.first[h] : self.first[h + 1]].T
            seen = tuple(sorted((l, m) for l, m in here.tolist() if l != m))
            qualities.append(self._quality(mean, seen))
        return qualities

    def _shows_barrier(self, h):
        openings = self.portfolio.openings[self.first[h] : self.first[h + 1]]
        return any(row[lap] in ("shingled", "reversed") for row in openings for lap in LAPS)

    def chance(self, fault, method):
        """That it stands at each opening after the work of a method, after what was seen."""
        sights = self.sights[fault]
        chance = np.zeros(len(self.portfolio.openings))
        for o in np.flatnonzero(self.may_stand(fault, method)):
            standing, absent = (1.0, 1.0) if sights is None else sights[:, o]
            chance[o] = self.qualities[fault][self.portfolio.house_of[o]].after(standing, absent)
        return chance

    def _crew(self, fault):
        a = self.assumptions
        mean = float(fault["prior_" + a.choice["workmanship"]])
        if fault["fault_id"] == "tape_cold" and a["temperature_f"] < a["tape_warm_f"]:
            mean = with_odds(mean, a["cold_tape_odds"])
        if fault["fault_id"] == "sill_flange_sealed" and a.choice["sill_flange"] == "sealed":
            mean = 1.0
        return self._quality(mean, ())

    def _quality(self, mean, seen):
        key = (mean, seen)
        if key not in self.known:
            self.known[key] = Quality(mean, self.weight, seen, self.exact)
        return self.known[key]

    def theta(self, fault, houses, uniforms):
        """Draws of the share of openings with a fault; uniforms are a row a house."""
        qualities = [self.qualities[fault][h] for h in houses]
        theta = np.empty_like(uniforms)
        groups = {}
        for row, quality in enumerate(qualities):
            groups.setdefault(id(quality), (quality, []))[1].append(row)
        for quality, group in groups.values():
            theta[group] = quality.quantiles(uniforms[group])
        return theta

    def may_stand(self, fault, method):
        """At which openings it may stand after the work of a method."""
        there = np.array([quality.mean > 0 for quality in self.qualities[fault]])[self.portfolio.house_of]
        there &= self.standing[method][fault]
        return there if self.sights[fault] is None else there & (self.sights[fault][0] > 0)


class Line:
    """A first line, and by the litres a year that arrive at a lap the chance of damage: tables over ln x, so fine that the nearest
    place will do (off by 2e-4 at most, as often up as down)."""

    STEPS, HIGH = 1 << 15, 12.0

    def __init__(self, assumptions, kind):
        a = self.a = assumptions
        horizon, warranty = int(a["horizon_years"]), int(a["warranty_years"])
        self.years = max(horizon, warranty)
        life = None
        if kind not in ("sealant", "capping"):
            self.sound = self.failed = a[kind] if kind in PASSING.values() else 1.0
        else:
            self.sound, self.failed = a["sound_seal_passes"], a["failed_seal_passes"]
            life = (a[f"{kind}_life_shape"], a[f"{kind}_life_years"])
        self._ages(life)
        # Less than is drained and dried does no harm.
        self.low = np.log(max(a["drying_l_per_year"], 1e-6))
        x = np.exp(np.linspace(self.low, self.HIGH, self.STEPS + 1))
        self.damage = self._damage(x)
        still = np.diff(np.concatenate((np.zeros((1, len(x))), self.damage)), axis=0)
        worth = (1 + a["discount_rate"]) ** -(np.arange(self.years) + 0.5)
        self.tables = {
            "horizon": self.damage[horizon - 1],
            "warranty": worth[:warranty] @ still[:warranty],
            "discounted": worth[:horizon] @ still[:horizon],
        }
        self.mean_passes = self._mean_passes(horizon)

    def _ages(self, life):
        """Chance that a seal of a cycle without renewal has failed by the middle of each year."""
        middle = np.arange(self.years) + 0.5
        self.failed_by = 1 - np.exp(-((middle / life[1]) ** life[0])) if life else 0 * middle

    def _annual(self, litres):
        a = self.a
        with np.errstate(divide="ignore"):
            kept = np.log(np.maximum(litres - a["drying_l_per_year"], 0) / a["damage_median_l_per_year"])
        return phi(kept / a["damage_spread"])

    def _damage(self, x):
        """Chance of damage by the end of each year: over the year in which the seal fails, cycle by cycle of renewal."""
        sound, failed = 1 - self._annual(self.sound * x), 1 - self._annual(self.failed * x)
        cycle = int(self.a["reseal_years"]) or self.years
        fails_in = np.diff(np.concatenate(([0], self.failed_by)))
        spared = np.empty((min(cycle, self.years) + 1, len(x)))
        for n in range(len(spared)):
            never = 1 - (self.failed_by[n - 1] if n else 0)
            spared[n] = never * sound**n + sum(fails_in[k] * sound**k * failed ** (n - k) for k in range(n))
        year = np.arange(1, self.years + 1)
        if cycle >= self.years:
            return 1 - spared[year]
        return 1 - spared[cycle] ** (year // cycle)[:, None] * spared[year % cycle]

    def _mean_passes(self, horizon):
        cycle = int(self.a["reseal_years"]) or self.years
        failed = self.failed_by[np.arange(horizon) % cycle]
        return np.mean(self.sound + (self.failed - self.sound) * failed)

    def places(self, log_x):
        """Where to read the tables, from ln x, which is used up."""
        log_x -= self.low
        log_x *= self.STEPS / (self.HIGH - self.low)
        log_x += 0.5
        return np.clip(log_x, 0, self.STEPS, out=log_x).astype(np.intp)

    def read(self, table, places):
        return np.take(self.tables[table], places, mode="clip")


class Lines:
    """The first lines; what passes the cladding is another share on another wall."""

    def __init__(self, portfolio, assumptions):
        p, kinds = portfolio, {fault["first_line"] for fault in assumptions.faults}
        passing = np.array([PASSING[cladding] for cladding in p.opening_facts["cladding"]], dtype=object)
        self.by_kind = {kind: Line(assumptions, kind) for kind in sorted({*kinds, *passing})}
        self.at = {kind: passing if kind == "cladding" else np.full(len(passing), kind, dtype=object) for kind in kinds}

    def mean_passes(self, kind):
        """By opening."""
        return np.array([self.by_kind[name].mean_passes for name in self.at[kind]])

    def of(self, kind, rows):
        """Every line of a kind, with the places among the openings `rows` at which it stands."""
        names = self.at[kind][rows]
        return [(self.by_kind[name], np.flatnonzero(names == name)) for name in sorted(set(names))]
