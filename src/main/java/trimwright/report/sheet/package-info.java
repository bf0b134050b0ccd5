/** The trim sheet: one document that goes to the bench, the pool and the owner, as HTML and as PDF of the same. */
package trimwright.report.sheet;
