package weatherlap.reports.output;

/** The version that the build wrote into the jar's manifest. */
public final class Version {
    private Version() {}

    public static String current() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "(unpackaged)" : version;
    }
}
