// A proposed sheet goes along to the form behind the # of the address, which no browser sends: who listens does not read which one was taken.
document.addEventListener("submit", (press) => {
  const sheet = [...new FormData(press.target)].filter(([name]) => name.startsWith("sheet-"));
  if (sheet.length === 0) return;
  press.preventDefault();
  location.assign(`${press.target.getAttribute("action")}#${new URLSearchParams(sheet)}`);
});
