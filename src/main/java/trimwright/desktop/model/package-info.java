/** What the window knows and can do, without a single control: documents, undo, background work, what is shown. */
package trimwright.desktop.model;
