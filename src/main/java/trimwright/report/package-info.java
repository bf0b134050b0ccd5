/**
 * What is handed to people: findings and attitudes in words, pictures, plots, the trim sheet. Numbers become text here and in the
 * packages above, nowhere below.
 */
package trimwright.report;
