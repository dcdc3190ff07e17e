package weatherlap.reports.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.analysis.columns.Layout;
import weatherlap.datasets.sorting.Scratch;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.DataDictionary;
import weatherlap.reports.format.Json;

/**
 * A folder of results that appears whole or not at all.
 *
 * <p>Files are written into a temporary folder beside the target and moved into place by {@link #commit}. A run that dies leaves
 * the target as it was; the next run into the same target removes what the dead one left, and puts an earlier output back that
 * a run killed between the two renamings of {@code commit} had moved aside.
 *
 * <p>An output that is not empty is replaced only when asked for ({@code force}) and only if it is plainly ours: it holds a {@code
 * run.json} of this program, no file but those which that names, and those as they were written. So nothing that somebody put there
 * or edited can be lost.
 */
public final class OutputFolder implements AutoCloseable {
    private final OutputRequest asked;
    private final Path target;
    private final Path fresh;
    private final Path earlier;
    private final Path scratch;
    private final FolderLock lock;
    private final List<Path> parentsMade;
    private final Thread atExit = new Thread(this::dropQuietly);
    private volatile boolean ended;
    private final SortedMap<String, String> written = Collections.synchronizedSortedMap(new TreeMap<>());
    private final SortedMap<String, Layout<?>> tables = Collections.synchronizedSortedMap(new TreeMap<>());

    private OutputFolder(OutputRequest asked, Path target, FolderLock lock, List<Path> parentsMade) {
        this.asked = asked;
        this.target = target;
        this.parentsMade = parentsMade;
        this.fresh = sibling(target, "new");
        this.earlier = sibling(target, "earlier");
        this.scratch = fresh.resolve(".scratch");
        this.lock = lock;
    }

    /** Takes the folder for a run that nothing is asked of, as {@link OutputRequest#open} does. */
    public static OutputFolder open(Path asked, boolean force, List<Path> inputs) {
        return open(new OutputRequest(asked, force), inputs);
    }

    /**
     * Takes the folder for this run.
     *
     * @param inputs what the run reads; the target may not hold any of it
     * @throws OutputRefused if the folder cannot or may not be written
     */
    static OutputFolder open(OutputRequest request, List<Path> inputs) {
        Path asked = request.folder();
        try {
            Path target = OutputTarget.resolve(asked, inputs);
            List<Path> parentsMade = Folders.create(target.getParent());
            FolderLock lock = FolderLock.take(sibling(target, "lock"))
                    .orElseThrow(() -> new OutputRefused("another run is writing " + asked + "; wait for it to end"));
            OutputFolder folder = new OutputFolder(request, target, lock, parentsMade);
            try {
                folder.clearAfterDeadRuns();
                OutputTarget.checkReplaceable(asked, target, request.force());
                Files.createDirectory(folder.fresh);
                Runtime.getRuntime().addShutdownHook(folder.atExit);
                return folder;
            } catch (IOException | RuntimeException e) {
                folder.letGo();
                throw e;
            }
        } catch (IOException e) {
            throw new OutputRefused("cannot write " + asked + " (" + OutputTarget.reason(e) + ")", e);
        }
    }

    /**
     * Writes one file. Safe to call from several threads.
     *
     * @param name path from the folder, of plain parts with {@code /} between them
     * @throws IllegalArgumentException if the name is not plain, or taken
     */
    public void write(String name, Content content) throws IOException {
        try (OutputStream out = begin(name)) {
            content.writeTo(out);
        }
    }

    /** Writes several, by name, in their order. */
    public void write(Map<String, Content> files) throws IOException {
        for (Map.Entry<String, Content> file : files.entrySet()) {
            write(file.getKey(), file.getValue());
        }
    }

    /**
     * Begins one file, which is whole when the stream is closed. Names as for {@link #write}.
     *
     * @throws IllegalArgumentException if the name is not plain, or taken
     */
    public OutputStream begin(String name) throws IOException {
        for (String part : name.split("/", -1)) {
            if (!SafeName.isPlainPart(part)) {
                throw new IllegalArgumentException("The file name (" + name + ") must be of plain parts.");
            }
        }
        if (name.equals(RunRecord.FILE) || written.putIfAbsent(name, "") != null) {
            throw new IllegalArgumentException("The file name (" + name + ") is taken.");
        }
        MessageDigest digest = Checksum.sha256();
        return new DigestOutputStream(create(name), digest) {
            @Override
            public void close() throws IOException {
                super.close();
                if (written.get(name).isEmpty()) { // a stream may be closed twice, a digest is taken once
                    written.put(name, Checksum.hex(digest.digest()));
                }
            }
        };
    }

    /**
     * Begins the file of a result table, whose columns {@link DataDictionary} will explain.
     *
     * @throws IllegalArgumentException if the file was begun before
     */
    public OutputStream begin(Layout<?> table) throws IOException {
        OutputStream file = begin(table.file());
        tables.put(table.file(), table);
        return file;
    }

    private OutputStream create(String name) throws IOException {
        if (ended) {
            throw new IOException("the run was ended");
        }
        Path file = fresh.resolve(name);
        Files.createDirectories(file.getParent());
        return new BufferedOutputStream(Files.newOutputStream(file), 1 << 16);
    }

    /** A place for what the run sets aside for itself, beside the files that are not yet in place; gone when they are, or with the run. */
    public Scratch scratch() {
        return new ScratchFolder(scratch);
    }

    /**
     * Writes {@code run.json} last and moves all into place.
     *
     * @throws OutputRefused if this repeats a run that read other files
     */
    public void commit(RunRecord run) throws IOException {
        asked.refuseOther(run.inputs());
        Folders.deleteWhole(scratch);
        if (!tables.isEmpty()) {
            write(DataDictionary.FILE, DataDictionary.of(tables.values()));
        }
        try (OutputStream out = create(RunRecord.FILE)) {
            Json.of(run.toJson(asked.options(), written)).writeTo(out);
        }
        if (!Folders.exists(target) || Folders.isEmpty(target)) {
            Files.deleteIfExists(target);
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        Files.move(target, earlier, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.move(earlier, target, StandardCopyOption.ATOMIC_MOVE);
            throw e;
        }
        try {
            Folders.deleteWhole(earlier);
        } catch (IOException e) {
            // the new output stands; the next run there clears what is left of the earlier one
        }
    }

    /** Drops what was not committed, and lets the folder go. What the disk does not let it clear, the next run there does. */
    @Override
    public void close() {
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            return; // the process is ending, and what this would do is being done
        }
        try {
            letGo();
        } catch (IOException e) {
            // whether the new output stands was decided before
        }
    }

    private synchronized void letGo() throws IOException {
        ended = true;
        try {
            Folders.deleteWhole(fresh);
        } finally {
            lock.close();
            Folders.deleteEmpty(parentsMade);
        }
    }

    /** When the process is asked to end: a file that is being written just then can come between, so several times. */
    private void dropQuietly() {
        for (int i = 0; i < 20 && (!ended || Folders.exists(fresh)); i++) {
            try {
                letGo();
            } catch (IOException e) {
                Thread.yield();
            }
        }
    }

    private void clearAfterDeadRuns() throws IOException {
        Folders.deleteWhole(fresh);
        if (Folders.exists(earlier)) {
            if (Folders.exists(target)) {
                Folders.deleteWhole(earlier);
            } else {
                Files.move(earlier, target, StandardCopyOption.ATOMIC_MOVE);
            }
        }
    }

    private static Path sibling(Path target, String purpose) {
        return target.resolveSibling("." + target.getFileName() + ".weatherlap-" + purpose);
    }
}
