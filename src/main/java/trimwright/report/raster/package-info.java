/**
 * A plain software renderer for pictures without a display: parallel views, a z-buffer, translucent layers. Float and pixels
 * live here only; nothing is read back into a computation.
 */
package trimwright.report.raster;
