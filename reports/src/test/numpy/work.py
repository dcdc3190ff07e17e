"""Labour, material and price of every house under one method, before anything is drawn.

After the pages of weatherlap.sim.labour, material, price and work: a draw of a house's minutes is a weighted sum of the minutes of the
steps, and of its material a weighted sum of the prices of the items.
"""

import numpy as np

from geometry import Geometry, apart, siding_runs
from tables import holds, numbers

HOUSE, WALL = ("job", "day"), ("elevation", "panel", "broken_panel")


def pert_mean(table, name):
    low, likely, high = (numbers(table, f"{name[0]}{end}{name[1]}") for end in ("low", "likely", "high"))
    return (low + 4 * likely + high) / 6


def cold_factor(assumptions):
    t = assumptions["temperature_f"]
    if assumptions.choice["cold_curve"] == "neca":
        return 1 / np.interp(t, [20, 30, 40, 50, 70, 80, 90], [0.89, 0.94, 0.98, 1, 1, 0.98, 0.93])
    t = max(t, 25)
    return 9.448 + 0.0518 * t - 2.819 * np.log(t)


def expected_breakage(portfolio, assumptions):
    """Share of the handled panels that break, a wall."""
    warm = np.interp(assumptions["temperature_f"], [20, 32, 50],
                     [assumptions["breakage_cold_factor"], assumptions["breakage_freezing_factor"], 1])
    condition = portfolio.wall_facts["siding_condition"]
    worse = np.select([condition == "brittle", condition == "unknown"], 
                      [assumptions["breakage_brittle_factor"], assumptions["breakage_unknown_factor"]], 1)
    return np.minimum(assumptions["breakage_fraction"] * warm * worse, 1)


def old_units(portfolio, assumptions):
    """What is presumed of the old units by their material and the year of the house."""
    material, year = portfolio.opening_facts["existing_material"], portfolio.year[portfolio.house_of]
    wood, hung = material == "wood", np.isin(portfolio.operation, ["double_hung", "single_hung"])
    flange_from = np.where(wood, assumptions["wood_flange_from_year"], assumptions["flange_from_year"])
    return {
        "sash_weights": np.where(wood & hung & (year < assumptions["sash_weights_until_year"]), "yes", "no"),
        "old_flange": np.where(year >= flange_from, "yes", "no"),
    }


class Work:
    """What the houses of a portfolio take under one method."""

    def __init__(self, portfolio, assumptions, method, runs=None):
        self.portfolio, self.assumptions, self.method = portfolio, assumptions, method
        self.geometry = Geometry(portfolio, assumptions, method)
        flanged = method == "full_flange"
        if not flanged:
            runs = [apart(count) for count in portfolio.openings_in_wall]
        self.runs = siding_runs(portfolio) if runs is None else runs
        self.panels = np.array([float(sum(panels for _, panels in wall)) for wall in self.runs])
        region = np.array([house.get("region") or assumptions.choice["region"] for house in portfolio.houses], dtype=object)
        self.house_facts = portfolio.house_facts | {"region": region}
        self.wall_facts = portfolio.wall_facts | {"region": region[portfolio.house_of_wall]}
        self.opening_facts = (
            portfolio.opening_facts | old_units(portfolio, assumptions) | {"region": region[portfolio.house_of]}
        )
        self.at_opening = self.geometry.quantities()
        self.at_wall = {
            "elevation": np.ones(len(portfolio.walls)),
            "panel": self.panels,
            "broken_panel": self.panels * expected_breakage(portfolio, assumptions),
        }
        self._labour()
        self._days()
        self._material()
        self._money()

    def _uses(self, row):
        return bool({"both", self.method} & set(row["method"].split("|")))

    def _labour(self):
        """Person-minutes for each minute of a step: at openings, at walls, at the house."""
        p, a = self.portfolio, self.assumptions
        self.step_mean = pert_mean(a.steps, ("", "_minutes"))
        shape = (len(a.steps),)
        self.opening_steps = np.zeros((len(p.openings), *shape))
        self.wall_steps = np.zeros((len(p.walls), *shape))
        self.job_steps, self.day_steps = np.zeros((2, len(p.houses), *shape))
        storey_factor = np.select(
            [p.storey == 1, p.storey == 2], [1, a["height_factor_second"]], a["height_factor_third"]
        )
        wall_factor = np.bincount(p.wall_of, storey_factor) / p.openings_in_wall
        learning = self._learning()[p.house_of]
        by_house = np.where(p.lead_safe, a["lead_safe_factor"], 1)
        contained, wall_contained = by_house[p.house_of], by_house[p.house_of_wall]
        for s, step in enumerate(a.steps):
            if not self._uses(step):
                continue
            driver, condition = step["driver"], step["applies_when"]
            pace = cold_factor(a) if step["cold_sensitive"] == "yes" else 1
            pace *= max(float(step.get("people") or 1) / a["crew_size"], 1)
            high = step["height_sensitive"] == "yes"
            if driver in HOUSE:
                target = self.job_steps if driver == "job" else self.day_steps
                target[:, s] = pace * holds(condition, self.house_facts, len(p.houses))
            elif driver in WALL:
                factor = pace * (wall_factor if high else 1)
                if driver != "elevation" and "lead_safe=yes" not in condition:
                    factor = factor * wall_contained
                where = holds(condition, self.wall_facts, len(p.walls))
                self.wall_steps[:, s] = where * factor * self.at_wall[driver]
            else:
                factor = pace * learning * (storey_factor if high else 1)
                factor = factor * (1 if "lead_safe=yes" in condition else contained)
                where = holds(condition, self.opening_facts, len(p.openings))
                self.opening_steps[:, s] = where * factor * self.at_opening[driver]

    def _learning(self):
        """Mean of the unit learning curve over the openings of each house."""
        count = np.arange(1, self.portfolio.openings_in_house.max() + 1)
        mean = np.cumsum(count ** np.log2(self.assumptions["learning_slope"])) / count
        return mean[np.maximum(self.portfolio.openings_in_house, 1) - 1]

    def _days(self):
        """Days by the rules of the page of weatherlap.sim.labour.DayPlan."""
        p, a = self.portfolio, self.assumptions
        crew = int(a["crew_size"])
        opening = self.opening_steps @ self.step_mean
        siding = np.array([step["driver"] != "elevation" for step in a.steps])
        wall = self.wall_steps @ self.step_mean
        wall_siding = self.wall_steps[:, siding] @ self.step_mean[siding]
        job = self.job_steps @ self.step_mean
        day = 60 * a["hours_per_day"] - a["travel_minutes_per_day"] - self.day_steps @ self.step_mean / crew
        first = np.concatenate(([0], np.cumsum(p.openings_in_wall)))
        walls = [[] for _ in p.houses]
        for w, runs in enumerate(self.runs):
            panel = wall_siding[w] / self.panels[w] if self.panels[w] else 0
            work = [(panels * panel, [opening[first[w] + o] for o in members]) for members, panels in runs]
            walls[p.house_of_wall[w]].append((wall[w] - wall_siding[w], work))
        self.days = np.array([plan_days(day[h], crew, job[h], walls[h]) for h in range(len(p.houses))])
        self.house_steps = self.job_steps + self.days[:, None] * self.day_steps
        self.travel = self.days * a["travel_minutes_per_day"] * crew
        self.opening_minutes_mean = opening
        self.wall_minutes_mean = wall
        self.minutes_mean = (
            np.bincount(p.house_of, opening, len(p.houses))
            + np.bincount(p.house_of_wall, wall, len(p.houses))
            + self.house_steps @ self.step_mean
            + self.travel
        )

    def _material(self):
        """Packages of every item: used at an opening, and bought whole for the house."""
        p, a = self.portfolio, self.assumptions
        self.item_mean = pert_mean(a.items, ("price_", ""))
        self.opening_items = np.zeros((len(p.openings), len(a.items)))
        self.packages = np.zeros((len(p.houses), len(a.items)))
        for i, item in enumerate(a.items):
            if not self._uses(item):
                continue
            driver, condition = item["driver"], item["applies_when"]
            each = float(item["quantity_per_driver"]) * (1 + float(item["waste_fraction"])) / float(item["package_size"])
            if driver in HOUSE:
                count = self.days if driver == "day" else 1
                used = count * each * holds(condition, self.house_facts, len(p.houses))
            elif driver in WALL:
                there = holds(condition, self.wall_facts, len(p.walls)) * each * self.at_wall[driver]
                used = np.bincount(p.house_of_wall, there, len(p.houses))
            else:
                there = holds(condition, self.opening_facts, len(p.openings)) * each * self.at_opening[driver]
                self.opening_items[:, i] = there
                used = np.bincount(p.house_of, there, len(p.houses))
            self.packages[:, i] = np.ceil(used - 1e-9)

    def _money(self):
        p, a = self.portfolio, self.assumptions
        price = [a.unit_prices[self.method, operation] for operation in p.new_operation]
        inches = p.width + p.units * p.height
        self.unit_usd = p.units * numbers(price, "base_usd") + numbers(price, "usd_per_united_inch") * inches
        glass_lb = 2.5 * 0.3048**2 / 0.45359237 * a["pane_thickness_mm"] * a["panes"] * p.width * p.height / 144
        frame_lb = a["frame_lb_per_ft"] * 2 * (p.width + p.height) / 12
        self.tipping_usd = (glass_lb + frame_lb) / 2000 * a["disposal_usd_per_ton"]
        tipping = np.bincount(p.house_of, self.tipping_usd, len(p.houses))
        self.fixed_usd = np.maximum(tipping, a["tipping_least_usd"]) + a["permit_usd"]
        self.units_in_house = np.bincount(p.house_of, self.unit_usd, len(p.houses))
        self.material_mean = self.packages @ self.item_mean + self.units_in_house + self.fixed_usd
        self.opening_material_mean = self.opening_items @ self.item_mean + self.unit_usd + self.tipping_usd
        self.person_hour = np.array([self._wage(house.get("region")) for house in p.houses])

    def _wage(self, region):
        """Mean over the crew, one carpenter and helpers, burden in."""
        a = self.assumptions
        crew = int(a["crew_size"])
        roles = ["carpenter"] + ["helper"] * (crew - 1)
        rows = [a.wages[region or a.choice["region"], role] for role in roles]
        return sum(float(row["usd_per_hour"]) * (1 + float(row["burden_fraction"])) for row in rows) / crew

    def price(self, warranty_usd):
        """What is asked for each house, and the direct cost that it is made from, by the expected repairs under the warranty, USD."""
        a = self.assumptions
        direct = self.minutes_mean / 60 * self.person_hour + self.material_mean + warranty_usd
        if a.choice["pricing"] == "gross_margin":
            return direct / (1 - a["gross_margin"] - a["service_reserve"]), direct
        overhead = self.minutes_mean / 60 / a["crew_size"] * a["overhead_usd_per_crew_hour"]
        return (direct + overhead) / (1 - a["net_profit"] - a["service_reserve"]), direct


def plan_days(day, crew, job, walls):
    """Working days of a house: walls of (set-up, runs), runs of (siding, openings), all in person-minutes."""
    slack = 1e-6
    count = 2 if crew >= 3 else 1
    people = crew / count
    used, left = [1] * count, [day] * count

    def total(wall):
        return wall[0] + sum(siding + sum(openings) for siding, openings in wall[1])

    def fits(t, minutes):
        return minutes / people <= left[t] + slack

    def next_day(t):
        used[t], left[t] = used[t] + 1, day

    def pour(t, minutes):
        minutes /= people
        while minutes > left[t] + slack:
            minutes -= left[t]
            next_day(t)
        left[t] -= minutes

    waiting = sorted((wall for wall in walls if wall[1]), key=lambda wall: -total(wall))
    last = 1 if waiting else 0
    while waiting:
        t = min(range(count), key=lambda t: (used[t], -left[t]))
        whole = [wall for wall in waiting if fits(t, total(wall))]
        begun = [wall for wall in waiting if len(wall[1]) > 1 and fits(t, wall[0] + wall[1][0][0] + sum(wall[1][0][1]))]
        wall = waiting[0] if left[t] == day else (whole + begun + [None])[0]
        if wall is None:
            next_day(t)
            continue
        waiting.remove(wall)
        before = wall[0]
        for siding, openings in wall[1]:
            minutes = before + siding + sum(openings)
            if not fits(t, minutes) and left[t] < day:
                next_day(t)
            if fits(t, minutes):
                pour(t, minutes)
            else:
                pour(t, before + siding / 2)
                for opening in openings:
                    if not fits(t, opening) and left[t] < day:
                        next_day(t)
                    pour(t, opening)
                pour(t, siding / 2)
            before = 0
            last = max(last, used[t])
    over = sum(map(total, filter(lambda wall: wall[1], walls))) + job - last * crew * day
    return max(1, last + max(0, int(np.ceil((over - slack) / (crew * day)))))
