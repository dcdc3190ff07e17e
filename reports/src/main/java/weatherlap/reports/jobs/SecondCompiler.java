package weatherlap.reports.jobs;

import java.lang.management.ManagementFactory;
import javax.management.JMException;
import javax.management.JMRuntimeException;
import javax.management.ObjectName;

/**
 * Java's second compiler, which pays for houses by the thousand. Of what comes after them most runs a few times, and is done sooner by the
 * first alone.
 */
public final class SecondCompiler {
    /**
     * The property that names a file with what the compilers are told after the houses, in the form of HotSpot's compiler directives (JEP
     * 165). It holds for the whole process from then on, so it is given to one that ends with its command.
     */
    public static final String AFTER_HOUSES = "weatherlap.compilers-after-houses";

    private SecondCompiler() {}

    /** Whether the compilers were told something: where no file is named, or another Java does not listen, all goes on as before. */
    static boolean afterHouses() {
        String file = System.getProperty(AFTER_HOUSES);
        if (file == null) {
            return false;
        }
        try {
            Object answer = ManagementFactory.getPlatformMBeanServer()
                    .invoke(
                            new ObjectName("com.sun.management:type=DiagnosticCommand"),
                            "compilerDirectivesAdd",
                            new Object[] {new String[] {'"' + file + '"'}},
                            new String[] {String[].class.getName()});
            return answer.toString().contains("directives added");
        } catch (JMException | JMRuntimeException e) {
            return false;
        }
    }
}
