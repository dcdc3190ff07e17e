package weatherlap.datasets.disk;

import java.io.IOException;
import java.nio.file.Path;

/** Asked before each act on a {@link FaultyDisk}; what it throws, the act fails with. A write that fails has written half. */
@FunctionalInterface
public interface Trouble {
    Trouble NONE = (act, path) -> {};

    void before(Act act, Path path) throws IOException;
}
