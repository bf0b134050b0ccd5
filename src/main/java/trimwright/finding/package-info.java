/** What is worth telling the user, as values: code, severity, place, values. No wording, and nothing of ours below. */
package trimwright.finding;
