/** When parts fall due for service or renewal, from the hours ridden on them. */
package courseworthy.wear;
