package weatherlap.datasets.climate;

import java.time.LocalDateTime;

/**
 * One line of a weather file; what is missing is NaN.
 *
 * @param row physical line in the file, from 1
 * @param time of the reading as the file gives it, brought to the beginning of the time it stands for
 * @param windFromDeg NaN where unknown or calm
 */
record Reading(
        int row,
        LocalDateTime time,
        double windFromDeg,
        double windMetresPerSecond,
        double rainMm,
        double temperatureC) {}
