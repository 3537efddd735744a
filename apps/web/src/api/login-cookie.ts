/** Name of the cookie of a signed-in browser; the web server only passes it on. */
export const LOGIN_COOKIE = '__Host-espalier-login'
