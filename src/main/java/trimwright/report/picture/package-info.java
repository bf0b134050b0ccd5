/**
 * Pictures of the boat and plots of what she does, drawn without a display. Lengths in mm until they become pixels; nothing drawn
 * is read back.
 */
package trimwright.report.picture;
