/** English words of the physics come with it; here stand only those that the page says otherwise. */
export default {};
