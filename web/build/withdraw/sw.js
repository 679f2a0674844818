// Takes the place of sw.js on a host where a build has to be withdrawn: phones then load the page from
// the host at each visit. It touches nothing that is stored; a later, whole sw.js takes over again.
self.addEventListener("install", () => {
  void self.skipWaiting();
});
// A file that is shared to the app is not for the host, and nothing here can show what is in it.
self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") event.respondWith(Response.redirect("./#/take-in", 303));
});
