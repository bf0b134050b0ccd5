/**
 * The test pool on the screen. The boat's frame (x forward, y to port, z up, mm) is shown with x to the right, z up and y away from
 * the viewer; what is drawn is rounded to floats about the boat's middle, and nothing is ever measured on it.
 */
package trimwright.desktop.tank3d;
