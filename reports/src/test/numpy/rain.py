"""Driving rain on every opening, after the page of weatherlap.sim.rain: litres a year at each joint and the spread of the years."""

from datetime import timedelta

import numpy as np

from tables import numbers, words

JOINTS = ("head", "jamb", "sill", "corner", "field")
# ISO 15927-3:2009: K_R, z0, z_min; the distances up to which an obstacle counts, with its factor (from memory, as in the program).
ROUGHNESS = {
    "open_sea_or_flat": (0.17, 0.01, 2),
    "farmland": (0.19, 0.05, 4),
    "suburban": (0.22, 0.3, 8),
    "urban": (0.24, 1, 16),
}
OBSTACLES = ([8, 15, 25, 40, 60, 80, 100, 120], [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0])


def years_of(weather):
    """Index of the year of every hour, the number of whole years, and the length in years.

    A year runs from the first hour or its anniversary. One that lacks no more than fifteen days is whole; as little at the end belongs
    to the year before it. More than that is a part of a year of 8,766 h.
    """
    hours, slack, edges = len(weather.rain), 15 * 24, [0]
    while True:
        anniversary = weather.start.replace(year=weather.start.year + len(edges))
        edge = (anniversary - weather.start) // timedelta(hours=1)
        if edge > hours + slack:
            break
        edges.append(min(edge, hours))
    whole = len(edges) - 1
    rest = hours - edges[-1]
    if rest <= slack and whole:
        edges[-1], rest = hours, 0
    year = np.searchsorted(edges[1:], np.arange(hours), side="right")
    return year, max(whole, 1), whole + rest / 8766


class Climate:
    """Hours in which rain is driven, and the walls they were asked for.

    Where the winds are not those of the houses, every wall is the mean of 24 that face all ways.
    """

    def __init__(self, weather, assumptions, any_bearing=False):
        self.any_bearing = any_bearing
        self.year, self.whole, self.length = years_of(weather)
        with np.errstate(invalid="ignore"):
            wet = (weather.rain > 0) & (weather.rain >= assumptions["ground_limit_mm"])
            wet &= np.isfinite(weather.wind_from) & (weather.wind > 0)
        self.hour = np.flatnonzero(wet)
        self.wind, self.wind_from, self.rain = weather.wind[wet], weather.wind_from[wet], weather.rain[wet]
        diameter = np.maximum(1.105 * self.rain**0.232, 0.1)
        fall = -0.166033 + 4.91844 * diameter - 0.888016 * diameter**2 + 0.054888 * diameter**3
        self.slant = self.wind / np.minimum(fall, 9.2)
        self.index = 2 / 9 * self.wind * self.rain ** (8 / 9)
        self.default_spread = assumptions["year_spread"]
        self.walls = {}

    def wall(self, bearing):
        degree = int(np.floor(bearing + 0.5)) % 360
        if self.any_bearing:
            degree = 0
        if degree not in self.walls:
            self.walls[degree] = Wall(self, range(0, 360, 15) if self.any_bearing else [degree])
        return self.walls[degree]


class Wall:
    """The hours driven on a wall, the mean of some bearings, sorted by how far below an eave of 1 m they keep it dry."""

    def __init__(self, climate, bearings):
        litres, dry, spreads = [], [], []
        for bearing in bearings:
            cosine = np.cos(np.radians(climate.wind_from - bearing))
            towards = cosine > 1e-9
            litres.append(climate.index[towards] * cosine[towards] / len(bearings))
            dry.append(1 / (climate.slant[towards] * cosine[towards]))
            annual = np.bincount(climate.year[climate.hour[towards]], litres[-1], climate.whole)[: climate.whole]
            known = climate.whole >= 3 and annual.sum() > 0
            spreads.append(annual.std(ddof=1) / annual.mean() if known else climate.default_spread)
        litres, dry, self.spread = np.concatenate(litres), np.concatenate(dry), np.mean(spreads)
        self.litres_per_year = litres.sum() / climate.length
        order = np.argsort(dry)
        self.dry = dry[order]
        self.sums = np.concatenate(([0], np.cumsum(litres[order])))
        self.moments = np.concatenate(([0], np.cumsum(litres[order] * self.dry)))

    def mean_share(self, upper, lower, eave):
        """Mean share of the rain that reaches the band between two depths below an eave of a projection over the wind factor, m."""
        if self.sums[-1] == 0:
            return np.ones_like(upper)
        return np.where(eave > 0, (self._below(lower, eave) - self._below(upper, eave)) / np.maximum(lower - upper, 1e-300), 1)

    def _below(self, depth, eave):
        """Integral from the eave down to the depth of the share that arrives."""
        reached = np.searchsorted(self.dry, depth / np.maximum(eave, 1e-300), side="left")
        return np.maximum(depth * self.sums[reached] - eave * self.moments[reached], 0) / self.sums[-1]


class OpeningRain:
    """Columns over the openings of a portfolio; the same under both methods."""

    def __init__(self, portfolio, assumptions, climate):
        p, a, inch, foot = portfolio, assumptions, 0.0254, 0.3048
        width, height, bottom = p.width * inch, p.height * inch, p.bottom * inch
        eave_height = numbers(p.walls, "eave_height_ft")[p.wall_of] * foot
        overhang = numbers(p.walls, "overhang_in")[p.wall_of] * inch
        factor = self._wall_over_airfield(p, a, bottom + height / 2)
        self.climate, self.by_wall = climate, [climate.wall(row) for row in numbers(p.walls, "bearing_deg")]
        index = np.array([wall.litres_per_year for wall in self.by_wall])[p.wall_of]
        self.spread = np.array([wall.spread for wall in self.by_wall])[p.wall_of]
        self.free = index * factor * a["wall_factor_bare"]
        self.portfolio, self.hourly = p, a.choice["shelter"] == "hourly_overhang"
        self.published = self._published(p, a)
        eave = overhang / np.maximum(factor * a["wall_factor_bare"], 1e-300)
        top, foot_of = eave_height - bottom - height, eave_height - bottom
        strip, field = a["joint_strip_in"] * inch, a["field_strip_in"] * inch
        run = np.clip(top, 0, a["runoff_height_ft"] * foot)
        opening = self._share(np.maximum(top, 0), foot_of, eave)
        head = self._share(np.maximum(top, 0) - run, np.maximum(top, 0), eave)
        below = np.minimum(field, bottom)
        band = self._share(np.maximum(top, 0), foot_of + below, eave)
        self.rain = self.free * opening
        with np.errstate(invalid="ignore", divide="ignore"):
            self.shelter = np.where(self.free > 0, 1 - self.rain / self.free, 0)
        jamb = self.rain * height * 2 * strip
        sill = self.rain * width * height
        self.litres = {
            "head": self.free * head * width * run * a["runoff_fraction"],
            "jamb": jamb,
            "sill": sill,
            "corner": jamb + sill * np.minimum(1, 2 * strip / width),
            "field": self.free * band * (2 * field * (height + below) + width * below),
        }

    def _wall_over_airfield(self, p, a, middle):
        """C_R · C_T · O at the middle of each opening; C_T is 1."""
        k, z0, least = np.array([ROUGHNESS[house["terrain"]] for house in p.houses])[p.house_of].T
        away = numbers(p.walls, "obstruction_m", np.inf)[p.wall_of]
        obstacle = np.array(OBSTACLES[1])[np.searchsorted(OBSTACLES[0], away, side="left")]
        return k * np.log(np.maximum(middle, least) / z0) * obstacle

    def _published(self, p, a):
        """The published wall factor over that of a bare wall."""
        gable = numbers(p.walls, "overhang_in")[p.wall_of] == 0
        factor = np.where(gable | (p.storeys[p.house_of] > 2), 0.4, 0.3)
        return factor / a["wall_factor_bare"]

    def _share(self, upper, lower, eave):
        if not self.hourly:
            return self.published
        share = np.empty(len(upper))
        walls = np.array([id(wall) for wall in self.by_wall])[self.portfolio.wall_of]
        for wall in set(self.by_wall):
            here = walls == id(wall)
            share[here] = wall.mean_share(upper[here], lower[here], eave[here])
        return share

    def of_joint(self, joint):
        return self.litres[joint]
