package weatherlap.datasets.shop;

/** What is wrong with a logo, to stand behind the name of its file. */
final class LogoRefused extends Exception {
    private static final long serialVersionUID = 1L;

    LogoRefused(String message) {
        super(message);
    }
}
