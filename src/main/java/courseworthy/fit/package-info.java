/** Which parts go together: the questions, the rules that ask them, and what they find. */
package courseworthy.fit;
