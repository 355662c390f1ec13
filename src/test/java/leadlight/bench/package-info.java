/**
 * Measurements that are not tests: tables of what is done with unfit photos, of time and memory.
 * Each class says by which command it runs.
 */
package leadlight.bench;
