/** Writes on sheets as people do, soils them, and scans them as scanners do: made-up scans. */
package baysheet.simulate;
