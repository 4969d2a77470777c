// Works on what is there already: opens what a link leads to, and everything before it is printed.
const narrow = matchMedia("(max-width: 640px)").matches;
const folds = [...document.querySelectorAll("details.part")];
if (narrow) folds.forEach(fold => { fold.open = false; });

const openTarget = () => {
  const target = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  const fold = target && target.closest("details");
  if (fold) { fold.open = true; target.scrollIntoView(); }
};
addEventListener("hashchange", openTarget);
openTarget();

let closed = [];
addEventListener("beforeprint", () => {
  closed = [...document.querySelectorAll("details:not([open])")];
  closed.forEach(fold => { fold.open = true; });
});
addEventListener("afterprint", () => closed.forEach(fold => { fold.open = false; }));
