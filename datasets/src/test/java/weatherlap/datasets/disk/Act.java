package weatherlap.datasets.disk;

/** What a program can do to a disk. */
public enum Act {
    READ,
    /** Looks whether something is there, and what. */
    LOOK,
    MAKE_FOLDER,
    /** Opens a file to write into it. */
    OPEN,
    WRITE,
    MOVE,
    DELETE;

    /** Whether it can leave the disk other than it was. */
    public boolean changes() {
        return this != READ && this != LOOK;
    }

    /** Whether it takes room. */
    public boolean fills() {
        return this == MAKE_FOLDER || this == OPEN || this == WRITE;
    }
}
