/** What stands around the pool: panes that show what the models know and hand over what is done, and decide nothing. */
package trimwright.desktop.panes;
