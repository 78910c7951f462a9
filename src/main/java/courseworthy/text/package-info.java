/** YAML into a tree that keeps raw text, quoting and lines; nothing of the domain. */
package courseworthy.text;
