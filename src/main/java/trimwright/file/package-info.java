/** The boat file: reading with all findings at once, checking, overriding from the command line, atomic saving. */
package trimwright.file;
