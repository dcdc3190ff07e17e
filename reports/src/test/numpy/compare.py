"""Holds what `weatherlap compare` wrote against the reference.

    python3 compare.py REPORT PORTFOLIO CLIMATE.csv [--draws N] [--seed N] [--full FILE]

Numbers that no draw bears on must agree to the last digit written. Means must agree within their Monte Carlo error; of a quantile it is
asked what share of the reference's draws lies below it, whose error is binomial whatever the distribution. The program's own draws are
stratified and vary less than the plain ones that they are taken for here, so the test leans to passing, not to failing by chance.
Exit status 1: some number is further off than chance allows.
"""

import argparse
import json
import pathlib
import sys
from statistics import NormalDist

import numpy as np

from simulate import Model, simulate
from tables import METHODS, Assumptions, Portfolio, Weather, numbers, rows

# Chance that one run fails although both sides are right, over all its comparisons together.
FALSE_FAILURE = 1e-4
HOUSE, WALL, OPENING = ("house_id",), ("house_id", "elevation_id"), ("house_id", "elevation_id", "opening_id")


class Table:
    """A table of results, read by method, in the order of the reference."""

    def __init__(self, path, keys, order):
        self.rows = {method: [None] * len(order) for method in METHODS}
        place = {tuple(row[key] for key in keys): at for at, row in enumerate(order)}
        for row in rows(path):
            key = tuple(row[key] for key in keys)
            self.rows[row["method"]][place[key]] = row
        self.keys = keys

    def column(self, method, name):
        """The numbers, and half a unit of the last digit written."""
        texts = ["nan" if row is None else row[name] for row in self.rows[method]]
        decimals = [len(text.partition(".")[2]) if "e" not in text.lower() else 12 for text in texts]
        return np.array(texts, float), 0.5 * 10.0 ** -np.array(decimals)

    def name(self, method, at):
        return "/".join(self.rows[method][at][key] for key in self.keys)

    def there(self, method):
        """Rows that the program wrote: none of a flange at a house of masonry."""
        return np.array([row is not None for row in self.rows[method]])


# The program reads the chance of a fault that was seen from a table of quantiles.
NEAR = {"water_past_first_line_l_per_year": 0.01}


class Verdict:
    """Every comparison made, by quantity, in standard errors."""

    def __init__(self):
        self.found, self.exact = {}, {}

    def same(self, table, method, name, mine, places=slice(None), relative=1e-6):
        theirs, digit = (column[places] for column in table.column(method, name))
        mine = np.where(np.isnan(theirs), 0, np.broadcast_to(mine, theirs.shape))
        theirs = np.nan_to_num(theirs)
        off = np.abs(theirs - mine) / (digit + relative * np.maximum(1, np.abs(mine)))
        worst = int(np.argmax(off))
        where = f"{table.name(method, worst) if off[worst] > 0 else ''} {theirs[worst]:.10g} ≠ {np.broadcast_to(mine, off.shape)[worst]:.10g}"
        self.exact.setdefault(f"{table.keys[-1][:-3]} {name}", []).append((len(off), off[worst], f"{method} {where}"))

    def chance(self, quantity, label, theirs, mine, error, slack=0.0):
        """Differences over their standard error; `slack` is what rounding explains."""
        off = np.maximum(np.abs(theirs - mine) - slack - 1e-9 * np.abs(theirs), 0)
        z = np.divide(off, error, out=np.where(off > 0, np.inf, 0.0), where=error > 0)
        signed = np.sign(theirs - mine) * z
        entry = self.found.setdefault(quantity, {"z": [], "labels": [], "values": []})
        entry["z"].append(np.atleast_1d(signed))
        for at, text in enumerate(label):
            entry["labels"].append(text)
            entry["values"].append((np.atleast_1d(theirs)[at], np.atleast_1d(mine)[at]))

    def quantile(self, quantity, label, theirs, draws, share, size, slack):
        """The share of the reference's draws below a quantile of the program's, against the share that should be."""
        at = np.asarray(theirs)[:, None]
        slack = np.asarray(slack)[:, None] + 1e-9 * np.abs(at)
        below, up_to = draws < at - slack, draws <= at + slack
        nearest = np.clip(share, below.mean(axis=1), up_to.mean(axis=1))
        error = np.sqrt(share * (1 - share) * (1 / size + 1 / draws.shape[1]))
        self.chance(quantity, label, nearest, np.full(len(nearest), share), np.full(len(nearest), error))
        return below.sum(axis=0), up_to.sum(axis=0)

    def report(self):
        count = sum(len(entry["labels"]) for entry in self.found.values())
        limit = NormalDist().inv_cdf(1 - FALSE_FAILURE / (2 * count))
        failed = False
        print(f"{'without draws':42} {'values':>7} {'furthest off, in half a last digit':>36}")
        for quantity, parts in self.exact.items():
            worst = max(parts, key=lambda part: part[1])
            bad = worst[1] > 1
            failed |= bad
            note = f"  DIFFERS at {worst[2]}" if bad else ""
            print(f"{quantity:42} {sum(part[0] for part in parts):7} {worst[1]:36.3f}{note}")
        print(f"\n{'by draws':46} {'values':>7} {'mean z':>8} {'rms z':>8} {'max |z|':>8}  (limit {limit:.2f})")
        for quantity, entry in self.found.items():
            z = np.concatenate(entry["z"])
            worst = int(np.argmax(np.abs(z)))
            bad = np.abs(z[worst]) > limit
            failed |= bool(bad)
            theirs, mine = entry["values"][worst]
            note = f"  at {entry['labels'][worst]}: {theirs:.6g}, reference {mine:.6g}"
            flag = "  DIFFERS" if bad else ""
            print(f"{quantity:46} {len(z):7} {z.mean():8.2f} {np.sqrt((z**2).mean()):8.2f} {np.abs(z[worst]):8.2f}{note}{flag}")
        print(
            f"\n{count} comparisons by draws; a right program fails this with a chance of {FALSE_FAILURE:g} or less: "
            + ("THEY DISAGREE" if failed else "they agree")
        )
        return failed


class Comparison:
    def __init__(self, report, model, size):
        p = model.portfolio
        self.model, self.size, self.verdict = model, size, Verdict()
        self.houses = Table(report / "houses.csv", HOUSE, p.houses)
        self.walls = Table(report / "elevations.csv", WALL, p.walls)
        self.openings = Table(report / "openings.csv", OPENING, p.openings)
        self.first_wall = np.concatenate(([0], np.cumsum(np.bincount(p.house_of_wall, minlength=len(p.houses)))))
        self.totals, self.below = {}, {}

    def without_draws(self, method, openings):
        """What rests on tables and geometry alone."""
        p, m, w = self.model.portfolio, self.model, self.model.work[method]
        g, same = w.geometry, self.verdict.same
        lost = g.glass_existing_ft2 - g.glass_ft2
        columns = {
            "glass_existing_ft2": g.glass_existing_ft2,
            "glass_ft2": g.glass_ft2,
            "glass_lost_ft2": lost,
            "clear_width_in": g.clear_width,
            "clear_height_in": g.clear_height,
            "clear_area_ft2": g.clear_width * g.clear_height / 144,
            "order_width_in": g.order_width,
            "order_height_in": g.order_height,
            "labour_minutes_mean": w.opening_minutes_mean,
            "material_usd_mean": w.opening_material_mean,
            "driving_rain_l_per_m2_year": m.rain.rain,
            "shelter_fraction": m.rain.shelter,
            "water_past_first_line_l_per_year": m.passed(method),
        }
        some = next(row for row in openings.rows[method] if row is not None)
        for name, mine in columns.items():
            if name in some:
                same(openings, method, name, mine, relative=NEAR.get(name, 1e-6))

    def house_sums(self, method):
        p, m, w = self.model.portfolio, self.model, self.model.work[method]
        g, same = w.geometry, self.verdict.same
        same(self.walls, method, "openings", p.openings_in_wall)
        same(self.walls, method, "panels_down", w.panels)
        same(self.walls, method, "driving_rain_l_per_m2_year", np.bincount(p.wall_of, m.rain.rain) / p.openings_in_wall)
        at_wall = w.wall_minutes_mean + np.bincount(p.wall_of, w.opening_minutes_mean)
        same(self.walls, method, "labour_minutes_mean", at_wall)
        count = len(p.houses)
        lost = np.bincount(p.house_of, g.glass_existing_ft2 - g.glass_ft2, count)
        same(self.houses, method, "openings", p.openings_in_house)
        same(self.houses, method, "glass_lost_ft2", lost)
        same(self.houses, method, "glass_lost_pct", 100 * lost / np.bincount(p.house_of, g.glass_existing_ft2, count))
        same(self.houses, method, "labour_hours_mean", w.minutes_mean / 60)
        same(self.houses, method, "crew_days", w.days)
        same(self.houses, method, "material_usd_mean", w.material_mean)

    def mean(self, table, method, name, places, draws, scale=1.0):
        """A mean of the program's draws against that of the reference, at some rows; for the sum over them as well."""
        there, all_places = table.there(method)[places], places
        places, draws = np.asarray(places)[there], draws[there]
        if not len(places):
            return tuple(values[all_places] for values in table.column(method, name))
        theirs, digit = (column[places] for column in table.column(method, name))
        label = [f"{table.name(method, at)} {method}" for at in places]
        size = 1 / self.size + 1 / draws.shape[1]
        level = table.keys[-1][:-3]
        mine, error = scale * draws.mean(axis=1), scale * draws.std(axis=1, ddof=1) * np.sqrt(size)
        self.verdict.chance(f"{level} {name}", label, theirs, mine, error, digit)
        self.total(f"all {level}s {name}", method, theirs.sum(), scale * draws.sum(axis=0), digit)
        return tuple(values[all_places] for values in table.column(method, name))

    def total(self, name, method, theirs, draws, digit):
        entry = self.totals.setdefault((name, method), [0.0, 0.0, 0.0])
        for at, part in enumerate((theirs, draws, (digit**2).sum())):
            entry[at] = entry[at] + part

    def quantiles(self, table, method, name, places, draws, scale=1.0, shift=0.0, slack=0.0, shares=(0.1, 0.5, 0.9)):
        there = table.there(method)[places]
        places, draws = np.asarray(places)[there], draws[there]
        if not len(places):
            return
        shift, slack = (np.broadcast_to(part, there.shape)[there] for part in (shift, slack))
        label = [f"{table.name(method, at)} {method}" for at in places]
        level = table.keys[-1][:-3]
        for share in shares:
            column = f"{name}_p{round(100 * share)}"
            theirs, digit = (values[places] for values in table.column(method, column))
            off = (digit + slack) / scale
            quantity = f"{level} {column} (share below)"
            counts = self.verdict.quantile(quantity, label, (theirs - shift) / scale, draws, share, self.size, off)
            # Chances of damage lie in tables that are good to 0.001, which shows where many small ones come together.
            if name not in ("leak_score", "horizon_cost_usd"):
                entry = self.below.setdefault((f"all {level}s {column} (share below)", method, share), [0, 0, 0])
                entry[:] = (part + more for part, more in zip(entry, (*counts, len(places))))

    def draws(self, run):
        """Some houses, drawn."""
        for method in METHODS:
            self._houses(run, method)
            self._walls(run, method)
            self._openings(run, method)
        self._difference(run)

    def _mark_up(self):
        """What a dollar of expected repairs under the warranty adds to the price."""
        a = self.model.assumptions
        way = "gross_margin" if a.choice["pricing"] == "gross_margin" else "net_profit"
        return 1 / (1 - a[way] - a["service_reserve"])

    def _houses(self, run, method):
        r, h, table = run.result[method], run.houses, self.houses
        a, days = self.model.assumptions, self.model.work[method].days[h][:, None]
        warranty, up = r["warranty_usd"], self._mark_up()
        steady = r["price_usd"] - up * warranty.mean(axis=1)
        price_draws = steady[:, None] + up * warranty
        reserve = a["service_reserve"]
        self.mean(table, method, "labour_hours_mean", h, r["labour_minutes"], 1 / 60)
        self.mean(table, method, "material_usd_mean", h, r["material_usd"])
        theirs, digit = self.mean(table, method, "price_usd", h, price_draws)
        without = r["cost_usd"] - r["service_usd"][:, None]
        self.mean(table, method, "cost_usd_mean", h, without + reserve * price_draws)
        profit = r["gross_profit"][:, None] + ((1 - reserve) * up - 1) * (warranty - warranty.mean(axis=1)[:, None])
        self.mean(table, method, "gross_profit_per_crew_day_usd", h, profit / days)
        self.mean(table, method, "leak_probability", h, r["any_leak"])
        self.mean(table, method, "leak_score", h, r["any_leak"], 100)
        self.mean(table, method, "expected_damage_usd", h, r["damage_usd"])
        self.mean(table, method, "horizon_cost_usd_mean", h, price_draws + r["damage_usd"] + r["glass_usd"][:, None])
        self.quantiles(table, method, "labour_hours", h, r["labour_minutes"], 1 / 60)
        self.quantiles(table, method, "material_usd", h, r["material_usd"])
        self.quantiles(table, method, "cost_usd", h, without, shift=reserve * theirs, slack=reserve * digit)
        self.quantiles(table, method, "horizon_cost_usd", h, r["damage_usd"], shift=theirs + r["glass_usd"], slack=digit)

    def _walls(self, run, method):
        walls = np.arange(self.first_wall[run.houses[0]], self.first_wall[run.houses[-1] + 1])
        starts = np.concatenate(([0], np.cumsum(self.model.portfolio.openings_in_wall[walls])))[:-1]
        spared = np.add.reduceat(np.log1p(-np.minimum(run.result[method]["leak"], 1 - 1e-16)), starts, axis=0)
        self.mean(self.walls, method, "leak_score", walls, 1 - np.exp(spared), 100)

    def _openings(self, run, method):
        r, o, table = run.result[method], run.openings, self.openings
        self.mean(table, method, "labour_minutes_mean", o, r["opening_minutes"])
        self.mean(table, method, "material_usd_mean", o, r["opening_usd"])
        self.mean(table, method, "leak_probability", o, r["leak"])
        self.quantiles(table, method, "labour_minutes", o, r["opening_minutes"])
        self.quantiles(table, method, "material_usd", o, r["opening_usd"])
        self.quantiles(table, method, "leak_score", o, r["leak"], 100, shares=(0.1, 0.9))

    def _difference(self, run):
        """Full-flange less insert, draw by draw, where there is a way for a flange."""
        there = self.houses.there("full_flange")[run.houses]
        up, h = self._mark_up(), run.houses[there]
        if len(h):
            full, insert = (run.result[method] for method in ("full_flange", "insert"))
            damage = full["damage_usd"] - insert["damage_usd"]
            draws = damage + up * (full["warranty_usd"] - insert["warranty_usd"])
            steady = [r["price_usd"] - up * r["warranty_usd"].mean(axis=1) + r["glass_usd"] for r in (full, insert)]
            draws = (draws + (steady[0] - steady[1])[:, None])[there]
            (first, digit), (second, _) = (self._column(m, "horizon_cost_usd_mean", h) for m in ("full_flange", "insert"))
            label = [self.houses.name("insert", at) for at in h]
            error = draws.std(axis=1, ddof=1) * np.sqrt(1 / self.size + 1 / draws.shape[1])
            self.verdict.chance("house horizon cost, difference", label, first - second, draws.mean(axis=1), error, 2 * digit)
            self.total("all houses horizon cost, difference", "", (first - second).sum(), draws.sum(axis=0), 2 * digit)
        for method in METHODS:
            self._preferred(run, method)

    def _column(self, method, name, places):
        return (values[places] for values in self.houses.column(method, name))

    def _preferred(self, run, method):
        """Share of the draws in which the method costs least of those that the house is open to, at the program's own prices."""
        there = self.houses.there(method)[run.houses]
        h = run.houses[there]
        if not len(h):
            return
        cost, slack = {}, 0
        for other in METHODS:
            price, digit = self._column(other, "price_usd", h)
            result = run.result[other]
            fixed = np.where(np.isnan(price), np.inf, price + result["glass_usd"][there])
            cost[other] = result["damage_usd"][there] + fixed[:, None]
            slack = slack + np.where(np.isnan(price), 0, digit)[:, None]
        rivals = np.minimum.reduce([cost[other] for other in METHODS if other != method])
        share, rounded = self._column(method, "preferred_probability", h)
        ahead = rivals - cost[method]
        low, high = (ahead > slack + 1e-9).mean(axis=1), (ahead > -slack - 1e-9).mean(axis=1)
        nearest = np.clip(share, low, high)
        middle = np.clip(nearest, 1 / self.size, 1 - 1 / self.size)
        error = np.sqrt(middle * (1 - middle) * (1 / self.size + 1 / ahead.shape[1]))
        label = [f"{self.houses.name(method, at)} {method}" for at in h]
        self.verdict.chance("house preferred_probability", label, share, nearest, error, rounded)

    def finish(self):
        for (name, method), (theirs, draws, digits) in self.totals.items():
            error = draws.std(ddof=1) * np.sqrt(1 / self.size + 1 / len(draws))
            self.verdict.chance(name, [method], np.array([theirs]), np.array([draws.mean()]), np.array([error]), np.sqrt(digits))
        for (name, method, share), (below, up_to, rows) in self.below.items():
            nearest = np.clip(share, below.mean() / rows, up_to.mean() / rows)
            error = below.std(ddof=1) / rows * np.sqrt(1 / self.size + 1 / len(below))
            self.verdict.chance(name, [method], np.array([nearest]), np.array([share]), np.array([error]))
        return self.verdict.report()


def main():
    options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    options.add_argument("report", type=pathlib.Path, help="folder that `weatherlap compare` wrote")
    options.add_argument("portfolio", type=pathlib.Path)
    options.add_argument("climate", type=pathlib.Path)
    options.add_argument("--draws", type=int, default=16384, help="of the reference")
    options.add_argument("--seed", type=int, default=20110101)
    options.add_argument("--full", type=pathlib.Path, help="openings.csv with all digits, to be held to 1e-6")
    options.add_argument("--exact-posterior", action="store_true", help="beliefs after sights as they are, not as one beta")
    given = options.parse_args()
    settings = json.loads((given.report / "run.json").read_text(encoding="utf-8"))["settings"]
    assumptions = Assumptions(given.report / "assumptions")
    portfolio = Portfolio(given.portfolio)
    model = Model(portfolio, assumptions, Weather(given.climate), given.exact_posterior, settings["any_bearing"])
    comparison = Comparison(given.report, model, settings["draws"])
    for method in METHODS:
        comparison.without_draws(method, comparison.openings)
        comparison.house_sums(method)
        if given.full:
            comparison.without_draws(method, Table(given.full, OPENING, portfolio.openings))
    for run in simulate(model, given.draws, given.seed, cells=3_000_000):
        comparison.draws(run)
    print(f"program: {settings['draws']} draws; reference: {given.draws} draws, seed {given.seed}\n")
    sys.exit(1 if comparison.finish() else 0)


if __name__ == "__main__":
    main()
