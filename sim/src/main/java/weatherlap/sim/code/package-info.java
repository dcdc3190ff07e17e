/** What do codes and rules of safety ask of a window and its room, before the work and after? */
package weatherlap.sim.code;
