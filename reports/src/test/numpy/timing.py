"""Times the reference: python3 timing.py PORTFOLIO ASSUMPTIONS CLIMATE.csv --draws N [--processes P] [--houses N]

Prints seconds for reading tables, for what no draw bears on, for draws with the means and 10, 50, 90 % points that `weatherlap compare`
writes, and for the whole. Nothing is written.
"""

import argparse
import multiprocessing
import os
import time

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

import numpy as np

from simulate import Draws, Model, World, chunks
from tables import METHODS, Assumptions, Portfolio, Weather

SPREADS = ("labour_minutes", "material_usd", "cost_usd", "damage_usd", "any_leak", "opening_minutes", "opening_usd", "leak")
shared = {}


def summaries(run):
    """Mean and 10, 50, 90 % points, a row a house or an opening, and how often each method costs less."""
    found = {}
    for method in METHODS:
        for name in SPREADS:
            column = run.result[method][name]
            found[method, name] = column.mean(axis=1), np.quantile(column, (0.1, 0.5, 0.9), axis=1)
    ahead = [run.result[m]["damage_usd"] + (run.result[m]["price_usd"] + run.result[m]["glass_usd"])[:, None] for m in METHODS]
    found["preferred"] = (ahead[0] < ahead[1]).mean(axis=1)
    return found


def part(span):
    random = np.random.default_rng([shared["seed"], 1, span[0]])
    return summaries(Draws(shared["model"], shared["world"], random, *span))


def main():
    options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    options.add_argument("portfolio")
    options.add_argument("assumptions")
    options.add_argument("climate")
    options.add_argument("--draws", type=int, default=256)
    options.add_argument("--houses", type=int, help="only the first so many")
    options.add_argument("--processes", type=int, default=1)
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--cells", type=int, default=40_000, help="openings × draws worked on at a time")
    given = options.parse_args()
    clock = [time.perf_counter()]
    portfolio = Portfolio(given.portfolio, given.houses)
    assumptions, weather = Assumptions(given.assumptions), Weather(given.climate)
    clock.append(time.perf_counter())
    shared.update(seed=given.seed, model=Model(portfolio, assumptions, weather))
    clock.append(time.perf_counter())
    shared["world"] = World(assumptions, np.random.default_rng([given.seed, 0]), given.draws)
    spans = list(chunks(portfolio, given.draws, given.cells))
    if given.processes > 1:
        with multiprocessing.get_context("fork").Pool(given.processes) as pool:
            found = pool.map(part, spans, chunksize=1)
    else:
        found = [part(span) for span in spans]
    clock.append(time.perf_counter())
    read, takeoff, draws = np.diff(clock)
    used = os.times()
    print(
        f"{len(portfolio.houses)} houses, {len(portfolio.openings)} openings, {given.draws} draws, {given.processes} process(es), "
        f"{len(found)} runs: tables {read:.2f} s, takeoff {takeoff:.2f} s, draws {draws:.2f} s, "
        f"whole {clock[-1] - clock[0]:.2f} s; processor time, with imports, {sum(used[:4]):.2f} s"
    )


if __name__ == "__main__":
    main()
