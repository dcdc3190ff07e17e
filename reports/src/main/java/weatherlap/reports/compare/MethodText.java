package weatherlap.reports.compare;

import java.util.List;
import weatherlap.sim.house.House;

/** How the comparison is worked out, and what can hurt, in paragraphs. */
final class MethodText {
    static final List<String> METHOD = List.of(
            "Two methods are set side by side for every opening. Full-flange: the siding is loosened around the opening, the old unit comes"
                    + " out whole, and a new unit with a nailing flange is lapped into the weather barrier. Full-frame: the old unit comes"
                    + " out whole, siding and barrier are left alone, and a unit without a flange is set to the opening, sealed to the"
                    + " wall and trimmed outside; the old laps stay. Insert: a smaller unit is set inside the frame that stays. No flanged"
                    + " unit fits behind brick or stucco: such a house is closed to full-flange, and the method that was not named stands"
                    + " in its place.",
            "Glass: the width and height of each lite, from the size of the frame and the sightlines of the unit, before and after. A new"
                    + " vinyl unit shows less glass than thin old aluminum under either method.",
            "Labor: each step of labour-steps.csv takes its person-minutes for one unit of its driver, such as a foot of perimeter or a"
                    + " siding panel; height, cold, lead-safe work and the crew\u2019s practice scale it. Siding is taken down once for all"
                    + " openings of a wall.",
            "Material: each item of materials.csv by its driver, with waste, bought in whole packages for a house; the new unit by its"
                    + " united inches.",
            "Price: from the mean cost by the pricing rule of the scenario. What it costs the shop holds labor, material, overhead by the"
                    + " hour, a reserve for service and the repairs expected of leaks that the shop's warranty covers: each leak is paid for once, by"
                    + " the shop within the price or by the family.",
            "Rain: wind-driven rain on each wall from hourly weather by ISO 15927-3, lessened hour by hour by the eave, and by terrain and"
                    + " obstructions.",
            "Leaks: what arrives at each joint passes the first line and then the lap faults that stand there: the old ones that a method"
                    + " leaves, or new ones that the work brings. What was seen at an opening changes how likely its faults and those of"
                    + " its house are. Seals age. Water that stays does damage with a chance that grows with its amount.",
            "How far to trust the level of the leaks: it is set to a survey of walls on a very wet coast, which found problems in about 90"
                    + " of 100 walls without an overhang and 25 of 100 under one of 24 in., one to four stories together. Here a wide"
                    + " eave helps a wall of one story more than that, and walls of two stories and up far less. Trust the ranking of"
                    + " walls and the difference between methods; trust the level within a story, not between low and high houses.",
            "Chance: what nobody knows for sure has a low, a likely and a high value. We run the numbers many times, each time with other"
                    + " values in that range; both methods and all houses see the same values of what they share. A range is that of 8 runs"
                    + " in 10. The leak score is the chance of damage in percent.",
            "Cost over the years: the price, the likely leak damage and what the lost glass is worth to the family. Money spent later"
                    + " counts for less. The preferred method is the one that costs less on average.",
            "Any opening can be taken apart down to the rows of the tables with: weatherlap explain --opening HOUSE/ELEVATION/OPENING.");

    static final List<String> CAUTIONS = List.of(
            "Lead paint: in a house built before " + House.LEAD_UNTIL_YEAR
                    + ", replacing a window is renovation work under 40 CFR 745 unless a test says"
                    + " otherwise; certified people and contained work areas.",
            "Asbestos may be in old siding, glazing putty and caulk: have it tested before it is disturbed.",
            "Falls: from 6 ft on, protection by 29 CFR 1926.501; ladders by 1926.1053. Openings are edges while they stand open.",
            "Silica dust from cutting brick, stucco or fiber cement: 29 CFR 1926.1153.",
            "Weight: large and mulled units, and all over the first story, want two people or a lift; the lifting guide of NIOSH is an ideal-case figure, not a legal limit.",
            "Heat and cold wear a crew, and tape and sealant have temperatures below which they do not stick.",
            "Escape openings (one a bedroom), safety glazing, guards, and light and air of rooms whose windows and floor are known are"
                    + " flagged from the model code of 2018; the local code and its official decide. Its clause for replacements"
                    + " (R310.2.5), which names existing frames, decides with escape_rule whether a way out that gets too small closes"
                    + " a method: a flag is a caution, never a pass.",
            "Mold inside a wall: stop, find the water, and follow local guidance before closing the wall.");

    private MethodText() {}
}
