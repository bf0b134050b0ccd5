/** What a builder saw in the pool: readings, the state of the boat at each, and how far each may be off. */
package trimwright.boat.pool;
