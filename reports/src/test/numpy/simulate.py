"""Plain Monte Carlo of every method: arrays over openings × draws, some houses at a time.

A draw holds causes of the world (minutes of steps, prices, admitted shares, a repair), of each house (pace of its crew, quality of its
laps and of its crew's, weather) and of each opening (its pace). All methods see the same causes; the price of a method is one number.
"""

import numpy as np

from laps import Beliefs, Lines
from rain import JOINTS, Climate, OpeningRain
from tables import METHODS, numbers
from work import Work


def pert(random, low, likely, high, draws):
    """Draws of the beta-PERT with shape 4, a row for each triple."""
    low, likely, high = (np.atleast_1d(np.asarray(end, float))[:, None] for end in (low, likely, high))
    width = high - low
    alpha = 1 + 4 * (likely - low) / np.where(width > 0, width, 1)
    return low + width * random.beta(alpha, 6 - alpha, size=(len(low), draws))


def factors(random, spread, shape):
    """Lognormal, mean 1, with this coefficient of variation."""
    sigma = np.sqrt(np.log1p(spread**2))
    return np.exp(sigma * random.standard_normal(shape) - sigma**2 / 2)


class World:
    """Causes that every house shares, a column a draw."""

    def __init__(self, assumptions, random, draws):
        a, ends = assumptions, ("low", "likely", "high")
        self.minutes = pert(random, *(numbers(a.steps, end + "_minutes") for end in ends), draws)
        self.prices = pert(random, *(numbers(a.items, "price_" + end) for end in ends), draws)
        admitted = pert(random, *(numbers(a.faults, "admitted_" + end) for end in ends), draws)
        with np.errstate(divide="ignore"):
            self.log_admitted = np.log(admitted)
        spread = a["unit_price_spread"]
        self.unit_factor = pert(random, 1 - spread, 1, 1 + spread, draws)[0]
        repair = (a["repair_cost_low_usd"], a["repair_cost_usd"], a["repair_cost_high_usd"])
        self.repair = pert(random, *repair, draws)[0]


class Model:
    """All that does not depend on a draw."""

    def __init__(self, portfolio, assumptions, weather, exact=False, any_bearing=False):
        self.portfolio, self.assumptions = portfolio, assumptions
        self.work = {method: Work(portfolio, assumptions, method) for method in METHODS}
        self.rain = OpeningRain(portfolio, assumptions, Climate(weather, assumptions, any_bearing))
        self.beliefs = Beliefs(portfolio, assumptions, exact)
        self.lines = Lines(portfolio, assumptions)

    def passed(self, method):
        """Water expected past the weakest of the first lines before a standing fault at each joint, L a year."""
        faults, total = self.assumptions.faults, 0
        for joint in JOINTS:
            here = [f for f, fault in enumerate(faults) if fault["joint"] == joint]
            passes = np.array([self.lines.mean_passes(faults[f]["first_line"]) for f in here])
            stands = np.array([self.beliefs.chance(f, method) for f in here])
            order = np.argsort(-passes, axis=0, kind="stable")
            passes, stands = (np.take_along_axis(column, order, axis=0) for column in (passes, stands))
            none_weaker = np.cumprod(np.vstack((np.ones(stands.shape[1]), 1 - stands[:-1])), axis=0)
            total = total + self.rain.litres[joint] * (passes * stands * none_weaker).sum(axis=0)
        return total


class Draws:
    """Some houses, first to last, under every method: arrays with a column a draw."""

    def __init__(self, model, world, random, first, last):
        p, a = model.portfolio, model.assumptions
        self.model, self.world, self.houses = model, world, np.arange(first, last)
        start = np.concatenate(([0], np.cumsum(p.openings_in_house)))
        self.openings = np.arange(start[first], start[last])
        self.house = p.house_of[self.openings] - first
        self.starts = start[first:last] - start[first]
        draws = len(world.repair)
        houses, openings = (last - first, draws), (len(self.openings), draws)
        self.pace = factors(random, a["crew_spread"], houses)
        self.opening_pace = factors(random, a["opening_spread"], openings) * self.pace[self.house]
        self.quality = {"existing": random.random(houses), "new": random.random(houses)}
        self._waters(random.standard_normal(houses))
        self.result = {method: self._method(method) for method in METHODS}

    def _waters(self, normal):
        """Logarithm of the weather of the horizon at each opening."""
        years = self.model.assumptions["horizon_years"]
        variance = np.log1p(self.model.rain.spread[self.openings] ** 2 / years)[:, None]
        self.log_weather = np.sqrt(variance) * normal[self.house] - variance / 2

    def _sum(self, columns):
        return np.add.reduceat(columns, self.starts, axis=0)

    def _method(self, method):
        m, w = self.model, self.model.work[method]
        result = self._leaks(method)
        o, h = self.openings, self.houses
        minutes = (w.opening_steps[o] @ self.world.minutes) * self.opening_pace
        walls = np.flatnonzero(np.isin(m.portfolio.house_of_wall, h))
        shared = w.house_steps[h] @ self.world.minutes
        np.add.at(shared, m.portfolio.house_of_wall[walls] - h[0], w.wall_steps[walls] @ self.world.minutes)
        labour = self._sum(minutes) + shared * self.pace + w.travel[h][:, None]
        unit = self.world.unit_factor
        material = w.packages[h] @ self.world.prices + w.units_in_house[h][:, None] * unit + w.fixed_usd[h][:, None]
        result.update(
            opening_minutes=minutes,
            opening_usd=w.opening_items[o] @ self.world.prices + w.unit_usd[o][:, None] * unit + w.tipping_usd[o][:, None],
            labour_minutes=labour,
            material_usd=material,
        )
        self._money(method, result)
        return result

    def _money(self, method, result):
        a, w, h = self.model.assumptions, self.model.work[method], self.houses
        warranty = self._sum(result["leak"] * result["shop"][:, None]) * self.world.repair
        price, direct = (column[h] for column in w.price(self._spread(warranty.mean(axis=1))))
        hours = result["labour_minutes"] / 60
        varying = hours * w.person_hour[h][:, None] + result["material_usd"] + warranty
        varying += hours / a["crew_size"] * a["overhead_usd_per_crew_hour"]
        glass = (w.geometry.glass_existing_ft2 - w.geometry.glass_ft2)[self.openings]
        rate, years = a["discount_rate"], a["horizon_years"]
        annuity = (1 - (1 + rate) ** -years) / rate if rate else years
        result.update(
            warranty_usd=warranty,
            price_usd=price,
            service_usd=a["service_reserve"] * price,
            cost_usd=varying + (a["service_reserve"] * price)[:, None],
            gross_profit=price * (1 - a["service_reserve"]) - direct,
            damage_usd=self._sum(result["leak"] * result["family"][:, None]) * self.world.repair,
            glass_usd=np.add.reduceat(glass, self.starts) * a["glass_value_usd_per_ft2_year"] * annuity,
            any_leak=1 - np.exp(self._sum(np.log1p(-result["leak"]))),
        )

    def _spread(self, of_these_houses):
        """A column of all houses that holds those of these."""
        column = np.zeros(len(self.model.portfolio.houses))
        column[self.houses] = of_these_houses
        return column

    def _leaks(self, method):
        """Chance of damage at each opening within the horizon, draw by draw, and what family and shop pay of a repair for it."""
        spared = np.ones(self.log_weather.shape)
        covers = self.model.assumptions.choice["warranty_covers"]
        paths = []
        for f, fault in enumerate(self.model.assumptions.faults):
            rows, chance = self._chance(f, fault, method)
            if not len(rows):
                continue
            litres = self.model.rain.litres[fault["joint"]][self.openings[rows]]
            log_x = self.log_weather[rows]
            log_x += np.log(litres)[:, None]
            log_x += self.world.log_admitted[f]
            damage, later, within = np.empty((3, *log_x.shape))
            for line, at in self.model.lines.of(fault["first_line"], self.openings[rows]):
                places = line.places(log_x[at])
                for column, name in ((damage, "horizon"), (later, "discounted"), (within, "warranty")):
                    column[at] = line.read(name, places)
            for column in (damage, later, within):
                column *= chance
            spared[rows] *= 1 - damage
            covered = covers == "any_leak" or covers == "own_work" and fault["kind"] == "new"
            paths.append((rows, damage, later.sum(axis=1), within.sum(axis=1) * covered))
        leak = 1 - spared
        family, shop = self._payers(leak, paths)
        return {"leak": leak, "family": family, "shop": shop}

    def _chance(self, f, fault, method):
        """Openings at which the fault may stand in water, and the chance that it does, by draw."""
        beliefs, o = self.model.beliefs, self.openings
        wet = self.model.rain.litres[fault["joint"]][o] > 0
        rows = np.flatnonzero(wet & beliefs.may_stand(f, method)[o])
        theta = beliefs.theta(f, self.houses, self.quality[fault["kind"]])[self.house[rows]]
        if beliefs.sights[f] is not None:
            standing, absent = beliefs.sights[f][:, o[rows], None]
            seen = np.flatnonzero((standing != absent)[:, 0])
            own = theta[seen]
            raised = own * standing[seen]
            theta[seen] = raised / (raised + (1 - own) * absent[seen])
        return rows, theta

    def _payers(self, leak, paths):
        """Present worth of a repair by who pays it: means of each path, weighted by what the path adds to the chance."""
        total = np.zeros(leak.shape)
        for rows, damage, _, _ in paths:
            total[rows] += damage
        share = np.divide(leak, total, out=np.zeros_like(leak), where=total > 0)
        weight, family, shop = np.zeros((3, len(leak)))
        for rows, damage, worth, covered in paths:
            adds = np.einsum("od,od->o", share[rows], damage)
            mean = damage.sum(axis=1)
            per_damage = np.divide(adds, mean, out=np.zeros_like(mean), where=mean > 0)
            weight[rows] += adds
            shop[rows] += per_damage * covered
            family[rows] += per_damage * np.maximum(worth - covered, 0)
        return (np.divide(part, weight, out=np.zeros_like(part), where=weight > 0) for part in (family, shop))


def chunks(portfolio, draws, cells=400_000):
    """Runs of houses whose openings × draws stay near so many cells."""
    first, size = 0, 0
    for h, count in enumerate(portfolio.openings_in_house):
        if size and (size + count) * draws > cells:
            yield first, h
            first, size = h, 0
        size += count
    yield first, len(portfolio.houses)


def simulate(model, draws, seed, cells=400_000):
    """The draws of every run of houses, one after another."""
    world = World(model.assumptions, np.random.default_rng([seed, 0]), draws)
    for first, last in chunks(model.portfolio, draws, cells):
        yield Draws(model, world, np.random.default_rng([seed, 1, first]), first, last)
