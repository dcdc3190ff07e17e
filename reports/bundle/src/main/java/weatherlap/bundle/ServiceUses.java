package weatherlap.bundle;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Which types the classes of a folder may look for providers of. A named module has to say so; what it says too much does no harm, so
 * every public type that a class with a {@code ServiceLoader} names counts. Class files are read as the Java Virtual Machine
 * Specification describes them (4.1, 4.4).
 */
final class ServiceUses {
    private static final int PUBLIC = 0x0001;
    private static final int ENUM = 0x4000;
    private static final String LOADER = "java/util/ServiceLoader";

    private ServiceUses() {}

    static SortedSet<String> in(Path folder) throws IOException {
        SortedSet<String> found = new TreeSet<>();
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(file -> file.toString().endsWith(".class")).toList();
        }
        for (Path file : files) {
            if (holdsLoader(Files.readAllBytes(file))) {
                for (String type : ClassFile.read(file).types()) {
                    Path named = folder.resolve(type + ".class");
                    if (!type.contains("$")
                            && Files.exists(named)
                            && ClassFile.read(named).isOpenTo()) {
                        found.add(type.replace('/', '.'));
                    }
                }
            }
        }
        return found;
    }

    private static boolean holdsLoader(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1).contains(LOADER);
    }

    private record ClassFile(List<String> types, int access) {
        boolean isOpenTo() {
            return (access & PUBLIC) != 0 && (access & ENUM) == 0;
        }

        static ClassFile read(Path file) throws IOException {
            try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
                in.skipBytes(8);
                int count = in.readUnsignedShort();
                String[] texts = new String[count];
                List<Integer> names = new ArrayList<>();
                for (int i = 1; i < count; i++) {
                    int tag = in.readUnsignedByte();
                    switch (tag) {
                        case 1 -> texts[i] = in.readUTF();
                        case 7 -> names.add(in.readUnsignedShort());
                        case 8, 16, 19, 20 -> in.skipBytes(2);
                        case 15 -> in.skipBytes(3);
                        case 5, 6 -> {
                            in.skipBytes(8);
                            i++; // such a constant counts for two
                        }
                        default -> in.skipBytes(4);
                    }
                }
                int access = in.readUnsignedShort();
                return new ClassFile(names.stream().map(name -> texts[name]).toList(), access);
            }
        }
    }
}
