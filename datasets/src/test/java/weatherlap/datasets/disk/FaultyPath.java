package weatherlap.datasets.disk;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** A path of a {@link FaultyDisk}: one of the machine, but for the file system that it says it is of. */
record FaultyPath(FaultyDisk disk, Path real) implements InvocationHandler {
    static Path of(FaultyDisk disk, Path real) {
        return (Path) Proxy.newProxyInstance(
                FaultyPath.class.getClassLoader(), new Class<?>[] {Path.class}, new FaultyPath(disk, real));
    }

    private static FaultyPath ours(Path path) {
        return Proxy.isProxyClass(path.getClass()) && Proxy.getInvocationHandler(path) instanceof FaultyPath ours
                ? ours
                : null;
    }

    /** The path of the machine behind one of ours; any other as it is. */
    static Path real(Path path) {
        FaultyPath ours = ours(path);
        return ours == null ? path : ours.real;
    }

    @Override
    public Object invoke(Object self, Method method, Object[] arguments) throws Throwable {
        if (method.getName().equals("getFileSystem")) {
            return disk;
        }
        if (method.getName().equals("equals")) {
            return arguments[0] instanceof Path other && equals(ours(other));
        }
        Object[] plain = arguments == null ? new Object[0] : arguments.clone();
        for (int i = 0; i < plain.length; i++) {
            plain[i] = plain[i] instanceof Path path ? real(path) : plain[i];
        }
        if (method.getName().equals("toRealPath")) {
            disk.before(Act.LOOK, real);
        }
        try {
            return wrapped(method.invoke(real, plain));
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    private Object wrapped(Object answer) {
        if (answer instanceof Path path) {
            return of(disk, path);
        }
        if (answer instanceof Iterator<?> names) {
            List<Path> all = new ArrayList<>();
            names.forEachRemaining(name -> all.add(of(disk, (Path) name)));
            return all.iterator();
        }
        return answer;
    }
}
