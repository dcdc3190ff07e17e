package weatherlap.reports.handout;

import weatherlap.reports.page.Paper;

/** A handout on paper, laid out for so much room. */
public record HandoutSheet(Handout handout, Paper paper, Density density) {}
