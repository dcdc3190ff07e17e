/**
 * Makes of the built program an archive and, where the machine has the means, a package to install, each with a Java runtime of its own.
 *
 * <p>All classes become one named module inside the runtime's image: classes there, unlike those of jars, can be kept ready to use in the
 * runtime's archive of classes wherever the bundle is unpacked.
 */
package weatherlap.bundle;
