/** How much wind-driven rain reaches a point of a wall: hourly weather in, exposure of each joint of each opening out. */
package weatherlap.sim.rain;
