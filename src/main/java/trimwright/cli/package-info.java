/** The command line: one class a command, exit codes, text and JSON output. The only package that prints. */
package trimwright.cli;
