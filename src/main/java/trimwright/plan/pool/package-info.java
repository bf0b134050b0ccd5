/** What readings in the pool say about a boat, and how far she may be off before she gets wet (docs/statics.md, sections 8 and 9). */
package trimwright.plan.pool;
