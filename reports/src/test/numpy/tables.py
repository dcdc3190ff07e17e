"""Reads a portfolio folder, an assumption folder and hourly weather into columns.

What the columns mean stands in PortfolioTables, AssumptionSchemas and ClimateCsv.
"""

import csv
import pathlib
import re
import tomllib
from datetime import datetime

import numpy as np

METHODS = ("full_flange", "full_frame", "insert")
MASONRY = ("brick_veneer", "stucco")


def rows(path):
    with open(path, encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def words(table, name, empty=""):
    return np.array([row.get(name) or empty for row in table], dtype=object)


def numbers(table, name, empty=np.nan):
    return np.array([float(row.get(name) or empty) for row in table])


class Assumptions:
    """The tables of assumptions; `a["horizon_years"]` is a scalar and `a.choice["pricing"]` a word."""

    def __init__(self, folder, changes=()):
        folder = pathlib.Path(folder)
        scenario = tomllib.loads((folder / "scenario.toml").read_text(encoding="utf-8"))
        self.choice = dict(scenario.pop("choices"))
        self.scalar = {name: float(entry["value"]) for name, entry in scenario.items()}
        for name, value in (change.split("=", 1) for change in changes):
            if name in self.choice:
                self.choice[name] = value
            else:
                self.scalar[name] = float(value)
        self.steps = rows(folder / "labour-steps.csv")
        self.items = rows(folder / "materials.csv")
        self.faults = rows(folder / "lap-faults.csv")
        self.wages = {(row["region"], row["role"]): row for row in rows(folder / "wages.csv")}
        self.unit_prices = {(row["method"], row["operation"]): row for row in rows(folder / "units.csv")}
        self.sightlines = {
            (row["product"], row["material"], row["operation"]): row for row in rows(folder / "sightlines.csv")
        }

    def __getitem__(self, name):
        return self.scalar[name]


class Portfolio:
    """Houses, walls that have openings, and openings as columns, each sorted under the one before it."""

    def __init__(self, folder, limit=None):
        folder = pathlib.Path(folder)
        self.houses = rows(folder / "houses.csv")[:limit]
        house_at = {row["house_id"]: h for h, row in enumerate(self.houses)}
        walls = [row for row in rows(folder / "elevations.csv") if row["house_id"] in house_at]
        openings = [row for row in rows(folder / "openings.csv") if row["house_id"] in house_at]
        used = {(row["house_id"], row["elevation_id"]) for row in openings}
        walls = [row for row in walls if (row["house_id"], row["elevation_id"]) in used]
        walls.sort(key=lambda row: house_at[row["house_id"]])
        wall_at = {(row["house_id"], row["elevation_id"]): w for w, row in enumerate(walls)}
        openings.sort(key=lambda row: wall_at[row["house_id"], row["elevation_id"]])
        self.walls, self.openings = walls, openings
        self.house_of_wall = np.array([house_at[row["house_id"]] for row in walls])
        self.wall_of = np.array([wall_at[row["house_id"], row["elevation_id"]] for row in openings])
        self.house_of = self.house_of_wall[self.wall_of]
        self.openings_in_house = np.bincount(self.house_of, minlength=len(self.houses))
        self.openings_in_wall = np.bincount(self.wall_of, minlength=len(walls))
        self._facts()

    def _facts(self):
        house, wall, opening = self.house_of, self.wall_of, self.openings
        self.year = numbers(self.houses, "year_built")
        self.storeys = numbers(self.houses, "storeys")
        lead_test = words(self.houses, "lead_test", "unknown")
        self.lead_safe = (self.year < 1978) & (lead_test != "negative")
        self.width = numbers(opening, "frame_width_in")
        self.height = numbers(opening, "frame_height_in")
        self.units = numbers(opening, "units", 1)
        self.bottom = numbers(opening, "sill_height_in")
        self.operation = words(opening, "operation")
        new = words(opening, "new_operation")
        self.new_operation = np.where(new == "", self.operation, new)
        eave_in = 12 * numbers(self.walls, "eave_height_ft")[wall]
        storey = np.floor((self.bottom + self.height / 2) / (eave_in / self.storeys[house])) + 1
        self.storey = np.clip(storey, 1, self.storeys[house]).astype(int)
        self.house_facts = {
            "cladding": words(self.houses, "cladding"),
            "barrier": words(self.houses, "barrier", "unknown"),
            "storeys": words(self.houses, "storeys"),
            "year_built": words(self.houses, "year_built"),
            "lead_safe": np.where(self.lead_safe, "yes", "no").astype(object),
        }
        condition = words(self.walls, "siding_condition", "unknown")
        self.wall_facts = {name: fact[self.house_of_wall] for name, fact in self.house_facts.items()}
        self.wall_facts["siding_condition"] = condition
        self.opening_facts = {name: fact[wall] for name, fact in self.wall_facts.items()}
        names = ("room", "existing_material", "interior_return")
        self.opening_facts.update({name: words(opening, name) for name in names})
        self.opening_facts.update(
            frame_condition=words(opening, "frame_condition", "unknown"),
            operation=self.operation,
            new_operation=self.new_operation,
            units=words(opening, "units", "1"),
            storey=self.storey.astype(str).astype(object),
        )
        laps = {lap: words(opening, lap, "unknown") for lap in ("head_lap", "jamb_lap", "sill_lap")}
        self.lap_facts = {**self.opening_facts, **laps}

    def can_stand(self, fault, method, more):
        """At which openings a lap fault can stand after the work of a method; `more` are facts that rest on assumptions."""
        count = len(self.openings)
        if not {"both", method} & set(fault["method"].split("|")):
            return np.zeros(count, dtype=bool)
        facts = {**self.lap_facts, **more, "method": np.full(count, method, dtype=object)}
        return holds(fault.get("applies_when") or "", facts, count)


def holds(condition, facts, count):
    """Where `cladding=vinyl_siding|stucco & storey!=1 or year_built>=1955` holds, over columns of facts."""
    anywhere = np.zeros(count, dtype=bool)
    for terms in re.split(r"\sor\s", condition):
        where = np.ones(count, dtype=bool)
        for term in filter(None, (part.strip() for part in terms.split("&"))):
            where &= term_holds(term, facts)
        anywhere |= where
    return anywhere


def term_holds(term, facts):
    name, relation, values = (part.strip() for part in re.fullmatch(r"(\w+)\s*(!=|>=|<|=)(.*)", term).groups())
    if relation in (">=", "<"):
        from_there = facts[name].astype(int) >= int(values)
        return from_there if relation == ">=" else ~from_there
    among = np.isin(facts[name].astype(str), [value.strip() for value in values.split("|")])
    return ~among if relation == "!=" else among


class Weather:
    """Hours of weather: bearing the wind blows from, its speed and the rain; NaN where not read."""

    def __init__(self, path):
        table = rows(path)
        self.start = datetime.fromisoformat(table[0]["time"])
        self.wind_from = numbers(table, "wind_from_deg")
        self.wind = numbers(table, "wind_m_s")
        self.rain = numbers(table, "rain_mm")
