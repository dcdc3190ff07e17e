package weatherlap.reports.handout;

import weatherlap.reports.page.Paper;

/** A handout on paper. */
public record HandoutSheet(Handout handout, Paper paper) {}
