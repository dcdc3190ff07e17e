package weatherlap.datasets.climate;

/**
 * A storm or a shower of an invented climate.
 *
 * @param firstHour from the start of the climate
 * @param hours how long it lasts, 1 or more
 * @param rainMm in all
 * @param startFromDeg where its wind comes from as it begins
 * @param endFromDeg as it ends
 * @param windGain by how much it strengthens the wind in its middle, 0 or more
 */
record RainEvent(int firstHour, int hours, double rainMm, double startFromDeg, double endFromDeg, double windGain) {
    /** Share of it that is over in the middle of an hour of it, above 0 and below 1. */
    double phase(int hourOfEvent) {
        return (hourOfEvent + 0.5) / hours;
    }

    /** How strong it is in an hour of it: 1 in the middle, fading to both ends. */
    double strength(int hourOfEvent) {
        return Math.sin(Math.PI * phase(hourOfEvent));
    }

    /** Where its wind comes from in an hour of it, turning fastest in the middle; not brought within 0 to 360. */
    double fromDeg(int hourOfEvent) {
        double p = phase(hourOfEvent);
        return startFromDeg + (endFromDeg - startFromDeg) * p * p * (3 - 2 * p);
    }
}
