"""Glass, sizes to order and quantities of every opening, as columns. Lengths in inches.

The equations are those that the pages of weatherlap.sim.geometry state.
"""

import numpy as np

from tables import numbers, words

HUNG = ("double_hung", "single_hung")


def sightlines(assumptions, product, materials, operations):
    """Columns of the sightline rows of each opening."""
    keys = [(product, material, operation) for material, operation in zip(materials, operations)]
    table = [assumptions.sightlines[key] for key in keys]
    names = "head jamb sill meeting_rail top_rail bottom_rail stile width_deduction height_deduction".split()
    return {name: numbers(table, name + "_in") for name in names}


def lites(width, height, line, operation):
    """Width, height and number of the lites of one unit."""
    across = width - 2 * line["jamb"] - 2 * line["stile"]
    up = height - line["head"] - line["sill"] - line["top_rail"] - line["bottom_rail"]
    hung, slider = np.isin(operation, HUNG), operation == "slider"
    rail = line["meeting_rail"]
    wide = np.where(slider, (across - rail) / 2, across)
    high = np.where(hung, (up - rail) / 2, up)
    some = (wide > 0) & (high > 0)
    return np.where(some, wide, 0), np.where(some, high, 0), np.where(hung | slider, 2, 1)


def clear(width, height, line, operation, assumptions):
    """Net clear width and height of one unit."""
    wide, high, _ = lites(width, height, line, operation)
    inside = np.maximum(width - 2 * line["jamb"], 0)
    up = np.maximum(height - line["head"] - line["sill"], 0)
    loss = assumptions["travel_loss_in"]
    chord = 2 * np.sin(np.radians(assumptions["awning_open_deg"]) / 2)
    hung, slider = np.isin(operation, HUNG), operation == "slider"
    cases = [hung, slider, operation == "casement", operation == "awning"]
    lower_sash = high + np.minimum(line["top_rail"], line["bottom_rail"]) - loss
    clear_width = np.select(cases, [inside, wide + line["stile"] - loss, inside - assumptions["hinge_loss_in"], inside])
    clear_height = np.select(cases, [lower_sash, up, up, np.minimum(up, up * chord)])
    some = (clear_width > 0) & (clear_height > 0)
    return np.where(some, clear_width, 0), np.where(some, clear_height, 0)


def screws(length, spacing, edge):
    return np.maximum(np.floor((length - 2 * edge) / spacing + 1e-9) + 1, 1)


class Geometry:
    """All openings of a portfolio under one method."""

    def __init__(self, portfolio, assumptions, method):
        self.portfolio, self.assumptions = portfolio, assumptions
        self.flanged, self.frame_stays = method == "full_flange", method == "insert"
        p, a = portfolio, assumptions
        material = words(p.openings, "existing_material")
        self.old = sightlines(a, "existing", material, p.operation)
        new_material = [a.choice["new_unit_material"]] * len(p.openings)
        self.line = sightlines(a, method, new_material, p.new_operation)
        self._order()
        cell = (p.width - (p.units - 1) * a["mull_post_in"]) / p.units
        wide, high, count = lites(cell, p.height, self.old, p.operation)
        self.glass_existing_ft2 = p.units * wide * high * count / 144
        wide, high, count = lites(self.order_width, self.order_height, self.line, p.new_operation)
        self.glass_ft2 = p.units * wide * high * count / 144
        self.clear_width, self.clear_height = clear(
            self.order_width, self.order_height, self.line, p.new_operation, a
        )

    def _order(self):
        p, a = self.portfolio, self.assumptions
        widths = [numbers(p.openings, f"width_{at}_in") for at in ("top", "middle", "bottom")]
        heights = [numbers(p.openings, f"height_{at}_in") for at in ("left", "middle", "right")]
        width = np.fmin.reduce([p.width, *widths])
        height = np.fmin.reduce([p.height, *heights])
        rising = numbers(p.openings, "diagonal_rising_in")
        falling = numbers(p.openings, "diagonal_falling_in")
        apart = np.nan_to_num(np.abs(rising - falling))
        lean = apart * np.hypot(width, height) / (2 * width)
        posts = (p.units - 1) * a["mull_post_in"]
        if not self.frame_stays:
            self.hole_width, self.hole_height = width + a["rough_gap_in"], height + a["rough_gap_in"]
            self.order_width = self._down((self.hole_width - self.line["width_deduction"] - posts) / p.units)
            self.overall_width = p.units * self.order_width + posts
        else:
            self.hole_width = (width - posts) / p.units - 2 * self.old["jamb"] - lean
            self.hole_height = height - self.old["head"] - self.old["sill"]
            self.order_width = self._down(self.hole_width - self.line["width_deduction"])
        self.order_height = self._down(self.hole_height - self.line["height_deduction"])

    def _down(self, length):
        step = self.assumptions["order_step_in"]
        return np.maximum(np.floor(length / step + 1e-9) * step, 0)

    def quantities(self):
        """Quantity of every driver counted at an opening."""
        p, n = self.portfolio, self.portfolio.units
        head = n * self.order_width if self.frame_stays else self.overall_width
        jamb = 2 * self.order_height * (n if self.frame_stays else 1)
        zero = np.zeros(len(p.openings))
        counted = {
            "opening": zero + 1,
            "unit": n,
            "united_inch": n * (self.order_width + self.order_height),
            "perimeter_ft": (2 * head + jamb) / 12,
            "head_ft": head / 12,
            "jamb_ft": jamb / 12,
            "sill_ft": head / 12,
            "corner": zero + 4 * (n if self.frame_stays else 1),
            "glass_ft2": self.glass_ft2,
            "return_ft": zero,
            "fastener": zero,
            "capping_ft": zero,
            "capping_ft2": zero,
            "tape_ft": zero,
        }
        counted.update(self._flanged(head) if self.flanged else self._capped() if self.frame_stays else {})
        counted.update(self._sealed(head, jamb))
        return counted

    def _flanged(self, head):
        p, a = self.portfolio, self.assumptions
        setback = numbers(p.openings, "setback_in", a["setback_in"])
        layers = numbers(p.openings, "return_layers")
        edge = 2 * (p.width + p.height) / 12
        along = a["fastener_spacing_in"], a["fastener_edge_in"]
        tails = 2 * (a["tape_tail_in"] + 2 * a["tape_tail_jamb_in"] + a["tape_tail_head_in"])
        return {
            "return_ft": np.where(setback > 0, edge * layers, 0),
            "fastener": 2 * screws(head, *along) + 2 * screws(self.order_height, *along),
            "tape_ft": (2 * head + 2 * self.order_height + tails) / 12,
        }

    def _capped(self):
        p, a = self.portfolio, self.assumptions
        tail = a["coil_tail_in"]
        across = p.width + 2 * tail
        area = a["coil_stretch_out_in"] * (2 * (p.height + tail) + across) + a["coil_stretch_out_sill_in"] * across
        return {"capping_ft": 2 * (p.width + p.height) / 12, "capping_ft2": area / 144}

    def _sealed(self, head, jamb):
        p, a = self.portfolio, self.assumptions
        bead = np.pi / 4 * a["sealant_bead_in"] ** 2
        around = 2 * head + jamb
        outside = around
        if self.flanged and a.choice["sill_flange"] == "open":
            outside = around - head
        # The gap is that of the frame's size: readings set the order, not what is drawn.
        if not self.frame_stays:
            hole = (p.width + a["rough_gap_in"]) * (p.height + a["rough_gap_in"])
            gap = hole - self.overall_width * self.order_height
        else:
            cell = (p.width - (p.units - 1) * a["mull_post_in"]) / p.units
            inside = (cell - 2 * self.old["jamb"]) * (p.height - self.old["head"] - self.old["sill"])
            gap = p.units * (inside - self.order_width * self.order_height)
        return {
            "sealant_in3": bead * (outside + around),
            "foam_in3": np.maximum(gap, 0) * a["foam_gap_depth_in"] * a["foam_fill"],
        }


def siding_runs(portfolio):
    """Of each wall: runs of openings that a full-flange job opens at once, from the left, each with the panels that come down."""
    cladding = portfolio.wall_facts["cladding"]
    first = np.concatenate(([0], np.cumsum(portfolio.openings_in_wall)))
    left = numbers(portfolio.openings, "left_in")
    runs = []
    for w, wall in enumerate(portfolio.walls):
        exposure, length = wall.get("course_exposure_in"), wall.get("panel_length_in")
        span = slice(first[w], first[w + 1])
        edges = np.array((portfolio.bottom[span], portfolio.height[span], left[span], portfolio.width[span])).T.tolist()
        if cladding[w] in ("brick_veneer", "stucco") or not exposure or not length:
            runs.append(apart(len(edges)))
            continue
        panels = [wall_panels(wall, float(exposure), float(length), [edge]) for edge in edges]
        parts = []
        for o, taken in enumerate(panels):
            tied = [part for part in parts if part[1] & taken]
            parts = [part for part in parts if part not in tied]
            parts.append(([o] + [p for part in tied for p in part[0]], taken.union(*(part[1] for part in tied))))
        parts = [(sorted(members, key=lambda o: edges[o][2]), len(taken)) for members, taken in parts]
        runs.append(sorted(parts, key=lambda part: (edges[part[0][0]][2], part[0][0])))
    return runs


def apart(openings):
    """Openings that no siding ties together."""
    return [([o], 0) for o in range(openings)]


def wall_panels(wall, exposure, length, openings):
    """The union over the openings of the panels that each of them meets, and of the course above."""
    eave, width = 12 * float(wall["eave_height_ft"]), 12 * float(wall["width_ft"])
    noise, pitch = 1e-6, length - 1
    top_course = int(np.ceil((eave - noise) / exposure)) - 1
    taken = set()
    for bottom, height, left, across in openings:
        lowest = int(np.floor((bottom + noise) / exposure))
        above = int(np.ceil((bottom + height - noise) / exposure))
        for course in range(lowest, min(above, top_course) + 1):
            cut = 0 if width <= length else (0, 1 / 2, 1 / 4, 3 / 4)[course % 4] * pitch
            last = max(int(np.ceil((width + cut - length - noise) / pitch)), 0)
            for k in range(last + 1):
                begin, end = max(0, k * pitch - cut), min(width, k * pitch - cut + length)
                if begin < left + across - noise and end > left + noise:
                    taken.add((course, k))
    return taken
