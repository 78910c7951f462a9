/** Reports as pages of HTML, each a file that needs no other. */
package courseworthy.render.html;
