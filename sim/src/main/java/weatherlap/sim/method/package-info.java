/** The ways to replace a window, and what sets them apart: whoever must decide by the method asks a fact of it here. */
package weatherlap.sim.method;
