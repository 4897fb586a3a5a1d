"""Every address by every role, odd paths, names, files, TLS."""
from client import *
import io, zipfile, ssl, socket, subprocess, collections, threading
A="Maren Lindqvist";T="Rotimi Adeyemi";T2="Sofia Brandt";I="Katarina Novak";E="Tomas Eriksen";L="Ines Moreau"
n=[1200]
def to(name):
    n[0]+=1; return tab(name,f'127.4.{n[0]//250}.{n[0]%250+1}')
P={'tester':to(T),'inspector':to(I),'engineer':to(E),'lead':to(L),'administrator':to(A),'nobody':Tab('127.4.9.9')}
ALL={'tester','inspector','engineer','lead','administrator'}
look,test,tick,note,sign,over,lst,ppl=ALL,{'tester','lead'},{'tester','inspector','lead'},{'tester','inspector','engineer','lead'},{'tester','inspector','engineer','lead'},{'inspector','engineer','lead'},{'engineer','lead'},{'administrator'}
u=P['lead'].js('/api/units?search=IN-1'); U=u['units'][0]['id']; LI=u['lists'][0]['id']
rows=[('GET','/api/state',look),('GET','/api/events',look),('GET','/api/session/named?text=600',look),('GET','/api/units',look),('GET',f'/api/units/{U}',look),('GET',f'/api/units/{U}/faces',look),('GET',f'/api/units/{U}/readings',look),('GET',f'/api/units/{U}/ticks',look),('GET',f'/api/units/{U}/papers/plan',look),('GET',f'/api/units/{U}/papers/wiring',look),('GET',f'/api/units/{U}/record.pdf',look),('GET',f'/api/units/{U}/record.html',look),('GET',f'/api/units/{U}/record.xlsx',look),('GET',f'/api/units/{U}/record.html.seal',look),('GET',f'/api/units/{U}/photos/x',look),('GET','/api/key-list',look),('GET','/api/keys',sign),('GET','/api/keys/none.key',sign),('GET','/api/shop',over),('GET',f'/api/lots/{LI}',over),('GET',f'/api/lots/{LI}/lot.html',over),('GET','/api/people',ppl),('GET','/api/people?history',ppl),('GET','/api/lists/none',lst),
('POST',f'/api/units/{U}/take-back',tick),('POST',f'/api/units/{U}/note',note),('POST',f'/api/units/{U}/sign',sign),('POST',f'/api/units/{U}/ticks',tick),('POST',f'/api/units/{U}/diff',look),('POST',f'/api/units/{U}/record.html.seal',sign),('POST','/api/keys',sign),('POST','/api/keys/withdraw',sign),('POST','/api/passphrase',look),('POST','/api/people',ppl),('POST','/api/people/none/roles',ppl),('POST','/api/people/none/passphrase',ppl),('POST','/api/people/none/withdraw',ppl),('POST','/api/people/none/withdraw-key',ppl),('POST','/api/lists?name=x.csv',lst),('POST','/api/lists/none/read',lst),('POST','/api/lists/none/take',lst)]
rows+=[('POST','/api/session/'+s,test) for s in('start','take','back','skip','jump','lead','confirm','note','photo?text=x','leads','meter','conditions','leave','finish')]
wrong=0
print('endpoint x role: answer of each (T I E L A -)')
for m,p,may in rows:
    res=[]
    for r,t in P.items():
        if p=='/api/events':
            t.c=None; c=t.conn(); c.request('GET',p,headers={'Host':f'{HOST}:{PORT}','Cookie':t.cookie}); rr=c.getresponse(); s=rr.status; body=rr.read(20).decode() if s==200 else rr.read().decode(); t.c.close(); t.c=None
        else:
            ct='application/octet-stream' if p.startswith('/api/lists?') else 'image/png' if 'photo?' in p else 'application/json'
            s,body=t.req(m,p,b'{}' if m=='POST' else None,ctype=ct)
        let='not for you to do' not in body and (s!=401 or 'passphrase is not right' in body)
        want=r in may
        if let!=want: wrong+=1; ok(f'{m} {p} {r}',False,(s,body))
        if s>=500 and s!=507: ok(f'{m} {p} {r} no 500',False,(s,body))
        res.append(str(s))
    print(' ',m,p.replace(U,'ID').replace(LI,'LIST'),' '.join(res))
ok(f'{len(rows)} endpoints x 6: all as the table says',wrong==0)
# IDOR
t,t2,i=P['tester'],to(T2),P['inspector']
r=i.post('/api/keys',{'passphrase':PP,'until':''}); kn=json.loads(r[1])['keys'][0]; fp=json.loads(r[1])['own'][0]['fingerprint']
ok("another's key file",t.get('/api/keys/'+kn.replace(' ','%20'))[0]==404)
ok("another's key to withdraw",t.post('/api/keys/withdraw',{'fingerprint':fp,'why':'x'})[0]==404)
s,b=t.post(f'/api/units/{U}/sign',{'role':'tester','key':kn,'passphrase':PP}); ok("sign with another's key",s in(403,404),(s,b))
s,b=i.post(f'/api/units/{U}/sign',{'role':'inspector','key':kn,'passphrase':'wrong wrong wrong'}); ok('key with a wrong passphrase',s==400,(s,b)); print('     ',s,b[:200])
for k in ('../units.db','..%2funits.db','/etc/passwd','.','','a'*200,'x\x00y','tls/bench.p12','a.key/../../units.db'):
    s,b=i.post(f'/api/units/{U}/sign',{'role':'inspector','key':k,'passphrase':PP}); ok('key name '+repr(k)[:40],s in(400,403,404),(s,b))
for p in ('/api/units/'+U+'/../../people','/api/units/%2e%2e/people','/api/units/..%2f..%2fpeople','//api/people','/api//people','/api/people/','/api/people;x','/api/people%00','/API/people','/api/people%2f','/./api/people','/api/people#x','/api/people?x=%0d%0aSet-Cookie:a','/api/units/'+U+'/record.pdf%0d%0aX:y','/bench.js/../api/people','/\\api\\people'):
    s,b=t.get(p); ok('path '+p.replace(U,'ID'),s in(400,401,403,404),(s,b)); ok('  no header',not t.last.getheader('X') and 'Set-Cookie' not in str(t.last.getheaders()))
# header injection by names: a unit with CRLF and quotes in its serial
lead=P['lead']
for ser in ('A"; x="\r\nSet-Cookie: a=b','..\\..\\x','<img src=x onerror=alert(1)>','x/../../y'):
    s,b=t.post('/api/session/start',{'list':LI,'serial':ser,'tester':'','conditions':[],'opened':[],'touched':[],'takeOver':True})
    if s==200:
        t.post('/api/session/finish',{}); us=[x for x in lead.js('/api/units')['units'] if x['serial'].startswith(ser[:3])]; 
        for x in us[-1:]:
            for f in('pdf','html'):
                s2,b2=lead.get(f"/api/units/{x['id']}/record.{f}",raw=True); hd=str(lead.last.getheaders()); ok(f'record {f} of {ser!r}',s2==200 and 'Set-Cookie' not in hd,(s2,hd[:300]))
                if f=='html': ok('  no markup of the serial in the record',b'<img src=x' not in b2)
    else: print('     serial',repr(ser),s,b[:120])
# uploads
eng=P['engineer']
def up(name,data): return eng.req('POST','/api/lists?name='+name,data,ctype='application/octet-stream')
a=time.time(); s,b=up('big.csv',b'x'*(33<<20)); ok('33 MiB',s==413,(s,b)); print('     ',s,round(time.time()-a,1),'s')
def xlsx(files):
    bio=io.BytesIO(); z=zipfile.ZipFile(bio,'w',zipfile.ZIP_DEFLATED)
    for n_,d in files: z.writestr(n_,d)
    z.close(); return bio.getvalue()
ctp='<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>'
rel='<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>'
wb='<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Wires" sheetId="1" r:id="rId1"/></sheets></workbook>'
wr='<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/></Relationships>'
def book(sheet): return xlsx([('[Content_Types].xml',ctp),('_rels/.rels',rel),('xl/workbook.xml',wb),('xl/_rels/workbook.xml.rels',wr),('xl/worksheets/sheet1.xml',sheet)])
head='<?xml version="1.0"?>'; ns='<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>'
bomb=book((head+ns+'<row r="1">'+'<c t="inlineStr"><is><t>'+'A'*(900<<20 if False else 600<<20)).encode())
cases={'zip bomb 600 MB of one cell':bomb,
 'entities a million laughs':book(('<?xml version="1.0"?><!DOCTYPE l [<!ENTITY a "'+'ha'*100+'">'+''.join(f'<!ENTITY a{i} "'+('&a;' if i==0 else f'&a{i-1};')*30+'">' for i in range(8))+']>'+ns+'<row r="1"><c t="inlineStr"><is><t>&a7;</t></is></c></row></sheetData></worksheet>').encode()),
 'external entity':book(('<?xml version="1.0"?><!DOCTYPE l [<!ENTITY x SYSTEM "file:///etc/passwd">]>'+ns+'<row r="1"><c t="inlineStr"><is><t>&x;</t></is></c></row></sheetData></worksheet>').encode()),
 'nested zip':xlsx([('a.zip',xlsx([('b',b'0'*(50<<20))]))]),
 '100000 entries':xlsx([(f'f{i}','') for i in range(100000)]),
 'a million rows claim':book((head+ns+''.join(f'<row r="{i}"><c r="A{i}" t="inlineStr"><is><t>x</t></is></c></row>' for i in range(1,200000))+'</sheetData></worksheet>').encode()),
 'names that climb':xlsx([('../../../../'+FOLDER.strip('/')+'/climbed','x'),('[Content_Types].xml',ctp)])}
for k,d in cases.items():
    a=time.time(); s,b=up('x.xlsx',d); el=time.time()-a
    leak='root:x:0' in b
    ok(f'{k} ({len(d)>>10} KiB)',s in(200,400,413) and not leak and el<30,(s,b)); print('     ',s,round(el,1),'s',b[:160].replace('\n',' ') if s!=200 else json.loads(b)['state']+': '+str([q['text'][:80] for q in json.loads(b)['problems']][:1]))
    s2,_=t.get('/api/state'); ok('  the bench answers',s2==200)
for nm in ('..%2F..%2Fevil.csv','%2e%2e','a%0d%0ab.csv','CON.csv','x'*300+'.csv'):
    s,b=up(nm,b'Wire,From,To\nW1,J1-1,P1-1\n'); ok('upload name '+nm[:30],s in(200,400),(s,b)); 
    if s==200: print('      file:',json.loads(b)['file'])
ok('nothing climbed',not __import__('os').path.exists(FOLDER+'/climbed'))
# events without a session; websocket
z=Tab('127.4.9.10'); ok('events without session',z.get('/api/events')[0]==401)
s,b=t.get('/api/events',headers={'Connection':'Upgrade','Upgrade':'websocket','Sec-WebSocket-Key':'dGhlIHNhbXBsZSBub25jZQ==','Sec-WebSocket-Version':'13'}); ok('websocket',s==400,(s,b))
# TLS
def tls(*a): 
    p=subprocess.run(['openssl','s_client','-connect',f'127.0.0.1:{PORT}',*a],input='',capture_output=True,text=True,timeout=20); o=p.stdout; import re
    m_=re.search(r'Cipher is (\S+)',o); return m_.group(1) if m_ else '(NONE)'
for a_ in (['-tls1_1','-cipher','ALL:@SECLEVEL=0'],['-tls1','-cipher','ALL:@SECLEVEL=0'],['-tls1_2','-cipher','NULL:@SECLEVEL=0'],['-tls1_2','-cipher','aNULL:@SECLEVEL=0'],['-tls1_2','-cipher','RC4:3DES:DES:MD5:@SECLEVEL=0'],['-tls1_2','-cipher','kRSA:@SECLEVEL=0'],['-tls1_2','-cipher','EXPORT:LOW:@SECLEVEL=0']):
    c=tls(*a_); ok('TLS '+' '.join(a_),c in('(NONE)','0000'),c)
print('      TLS 1.3',tls('-tls1_3'),' 1.2',tls('-tls1_2'))
sk=socket.create_connection(('127.0.0.1',PORT)); sk.sendall(b'GET /api/state HTTP/1.1\r\nHost: localhost\r\n\r\n'); sk.settimeout(5)
try: d=sk.recv(200)
except Exception as e: d=type(e).__name__.encode()
ok('plain HTTP is not answered',not d.startswith(b'HTTP/1.1 2'),d[:60])
p=subprocess.run(['openssl','s_client','-connect',f'127.0.0.1:{PORT}','-tls1_2','-no_ticket'],input='R\n',capture_output=True,text=True,timeout=20); ok('renegotiation by the client','Secure Renegotiation' in p.stdout)
ends()
