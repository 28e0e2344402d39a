/** Measures how long a sheet takes, and how much memory a run of many sheets needs. */
package baysheet.bench;
